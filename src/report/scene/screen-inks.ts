import type { Ink, Palette } from './scene.js';

/*
 * Inks on a screen, light and dark. Those that mean something stand out from their ground at 3:1 (WCAG 2.2, 1.4.11), and those that are
 * distinguished in one picture are distinct for the colour-blind as well (tests/report/scene holds the figures); each has a sign
 * or a shape of its own besides.
 */
export const SCREENS: Readonly<Record<'light' | 'dark', Palette>> = {
  light: {
    paper: '#ffffff',
    ink: '#1a1a1a',
    soft: '#565656',
    faint: '#c9c9c9',
    shade: '#ececec',
    pin: '#007de2',
    pap: '#ce6012',
    marker: '#147055',
    oil: '#7d7d7d',
    tone1: '#f1f6fa',
    tone2: '#e4eef6',
    tone3: '#d7e5f1',
    tone4: '#cadceb',
    tone5: '#bdd3e6',
    series1: '#0d5fb1',
    series2: '#993d01',
    series3: '#0b9a77',
    series4: '#5e0b55',
    series5: '#a58313',
  },
  dark: {
    paper: '#15171a',
    ink: '#ececec',
    soft: '#b4b4b4',
    faint: '#4a4d52',
    shade: '#2b2e33',
    pin: '#58a5d4',
    pap: '#eb9902',
    marker: '#00f19b',
    oil: '#868b92',
    tone1: '#1d2630',
    tone2: '#25323f',
    tone3: '#2d3d4e',
    tone4: '#35495d',
    tone5: '#3e556d',
    series1: '#75cbfd',
    series2: '#dc9708',
    series3: '#c7ebb9',
    series4: '#b162c4',
    series5: '#fff558',
  },
};

const INKS = Object.keys(SCREENS.light) as readonly Ink[];

/** Variables of a page, as CSS declares them. */
export const inkVariables = (scheme: keyof typeof SCREENS): string =>
  INKS.map((ink) => `--${ink}: ${SCREENS[scheme][ink]};`).join(' ');

/** Inks of a picture in a page that declares them, so that one picture serves a light and a dark one. */
export const SCREEN = Object.fromEntries(INKS.map((ink) => [ink, `var(--${ink})`])) as Palette;
