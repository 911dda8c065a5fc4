/** Exit codes; 64 and up follow the sysexits convention of BSD, 130 is 128 + SIGINT as shells count. */
export const EXIT = { fine: 0, input: 2, bug: 70, system: 74, cancelled: 130 } as const;
