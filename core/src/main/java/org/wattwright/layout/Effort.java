package org.wattwright.layout;

/** Counts what a run has covered, and ends it when told to. Not thread-safe. */
final class Effort {
  /** Look-ups between two looks at the cancel signal, less one. */
  private static final long CANCEL_MASK = (1 << 10) - 1;

  /** Look-ups between two reports of progress, less one. */
  private static final long PROGRESS_MASK = (1 << 16) - 1;

  private final AllocationDraft draft;
  private long lookUps;
  private long spent;
  private long covered;
  private boolean stopped;

  Effort(AllocationDraft draft) {
    this.draft = draft;
  }

  /** Starts to count again what is covered; what is spent stays spent. */
  void nextPass() {
    covered = 0;
  }

  /** Takes on so many allocations more; false if the run must end without them. */
  boolean spend(int allocations) {
    lookUps++;
    if ((lookUps & PROGRESS_MASK) == 0) {
      draft.progress.accept(covered);
    }
    stopped |=
        spent >= draft.budget || ((lookUps & CANCEL_MASK) == 1 && draft.cancel.getAsBoolean());
    if (!stopped) {
      spent += allocations;
      covered = Ways.plus(covered, allocations);
    }
    return !stopped;
  }

  boolean isStopped() {
    return stopped;
  }

  long covered() {
    return covered;
  }
}
