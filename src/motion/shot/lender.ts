import { Workspace } from './workspace.js';

/** Lends a workspace to each of a few shots that are needed together, and then the same workspaces to the next few. */
export class Lender {
  private readonly workspaces: Workspace[] = [];
  private lent = 0;

  /** A workspace that has not been lent since `beginAnew`. */
  next(): Workspace {
    const workspace = this.workspaces[this.lent] ?? new Workspace();
    this.workspaces[this.lent++] = workspace;
    return workspace;
  }

  /** Takes all workspaces back: the samples of the shots rolled in them are no longer needed. */
  beginAnew(): void {
    this.lent = 0;
  }
}
