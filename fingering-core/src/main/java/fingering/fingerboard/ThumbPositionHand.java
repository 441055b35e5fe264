package fingering.fingerboard;

import com.google.common.collect.ImmutableList;
import fingering.tables.OpenString;

/** A hand that leaves the neck for thumb position: cello and double bass. */
interface ThumbPositionHand extends HandModel {
  /** Where the fingers lie above the thumb. */
  ThumbPosition thumb();

  /** Where the fingers touch harmonics. */
  NeckTouch touch();

  @Override
  default ImmutableList<Placement> touching(OpenString string, double place) {
    return touch().touching(this, string, place);
  }

  @Override
  default double reach(Finger stops) {
    return touch().reach(stops);
  }

  @Override
  default boolean holds(Placement low, Placement high) {
    return low.frame().shape() == Frame.Shape.THUMB
        ? thumb().holds(low, high)
        : HandModel.super.holds(low, high);
  }
}
