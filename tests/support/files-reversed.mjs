/* Loaded before a program: folders list their files the other way round, as another disk might. */
import fs from 'node:fs';
import { syncBuiltinESMExports } from 'node:module';

const { readdirSync } = fs;
fs.readdirSync = (...args) => readdirSync(...args).reverse();
const { readdir } = fs.promises;
fs.promises.readdir = async (...args) => (await readdir(...args)).reverse();
syncBuiltinESMExports();
