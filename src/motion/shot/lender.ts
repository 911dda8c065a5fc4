import { Workspace } from './workspace.js';

/** Lends a workspace to each of a few shots that are needed together, and the same ones again to the next few. */
export class Lender {
  private readonly workspaces: Workspace[] = [];
  private lent = 0;

  /** One that no shot rolled since the last reset uses. */
  next(): Workspace {
    const workspace = this.workspaces[this.lent] ?? new Workspace();
    this.workspaces[this.lent++] = workspace;
    return workspace;
  }

  /** What was lent may be lent again: the samples of those shots are no longer needed. */
  beginAnew(): void {
    this.lent = 0;
  }
}
