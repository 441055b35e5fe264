package fingering.web;

import static fingering.page.view.PageText.text;

import fingering.page.live.LiveFrame;

/** Frames of pages, each with a fresh token for the changes that it makes. */
final class Frames {
  private final Gate gate;

  Frames(Gate gate) {
    this.gate = gate;
  }

  /** The frame of a page titled with the name of the program. */
  LiveFrame usual() {
    return titled(text("live.title"));
  }

  /** The frame of a page with a title. */
  LiveFrame titled(String title) {
    return new LiveFrame(title, gate.pageToken());
  }
}
