import type { Ink, Palette } from './scene.js';

/*
 * Inks on a screen, light and dark. Hues are those of Okabe & Ito, Color Universal Design (2008), which the colour-blind
 * tell apart (from memory), darkened or lightened until they stand out from the ground and from every tone.
 */
const SCREENS: Readonly<Record<'light' | 'dark', Palette>> = {
  light: {
    paper: '#ffffff',
    ink: '#1a1a1a',
    soft: '#565656',
    faint: '#c9c9c9',
    shade: '#ececec',
    pin: '#0072b2',
    pap: '#c65300',
    marker: '#00805e',
    rings: '#8a8a8a',
    tone1: '#f1f6fa',
    tone2: '#e4eef6',
    tone3: '#d7e5f1',
    tone4: '#cadceb',
    tone5: '#bdd3e6',
    series1: '#005c99',
    series2: '#b34a00',
    series3: '#006b4e',
    series4: '#8a3a86',
    series5: '#6e5600',
  },
  dark: {
    paper: '#15171a',
    ink: '#ececec',
    soft: '#b4b4b4',
    faint: '#4a4d52',
    shade: '#2b2e33',
    pin: '#56b4e9',
    pap: '#e69f00',
    marker: '#2fc79b',
    rings: '#8f959d',
    tone1: '#1d2630',
    tone2: '#25323f',
    tone3: '#2d3d4e',
    tone4: '#35495d',
    tone5: '#3e556d',
    series1: '#6bbcec',
    series2: '#f0ab3c',
    series3: '#3ecda3',
    series4: '#e0a5dc',
    series5: '#e6d96b',
  },
};

const INKS = Object.keys(SCREENS.light) as readonly Ink[];

/** Variables of a page, as CSS declares them. */
export const inkVariables = (scheme: keyof typeof SCREENS): string =>
  INKS.map((ink) => `--${ink}: ${SCREENS[scheme][ink]};`).join(' ');

/** Inks of a picture in a page that declares them, so that one picture serves a light and a dark one. */
export const SCREEN = Object.fromEntries(INKS.map((ink) => [ink, `var(--${ink})`])) as Palette;
