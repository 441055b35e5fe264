package fingering.fingerboard;

import com.google.common.collect.ImmutableList;
import fingering.tables.OpenString;

/** A hand with thumb position: cello and double bass. */
interface ThumbPositionHand extends HandModel {
  /** The model of thumb position. */
  ThumbPosition thumb();

  /** The model of touching harmonics. */
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
  default boolean canStopTogether(Placement low, Placement high) {
    return low.frame().shape() == Frame.Shape.THUMB
        ? thumb().canStopTogether(low, high)
        : HandModel.super.canStopTogether(low, high);
  }
}
