package fingering;

import net.jqwik.api.lifecycle.AroundPropertyHook;
import net.jqwik.api.lifecycle.PropagationMode;
import net.jqwik.api.lifecycle.PropertyAttributes;
import net.jqwik.api.lifecycle.PropertyExecutionResult;
import net.jqwik.api.lifecycle.PropertyExecutor;
import net.jqwik.api.lifecycle.PropertyLifecycleContext;

/**
 * Runs every property with the same seed in every build, since jqwik has no setting for that. The
 * system property {@code seed} sets another seed, or {@code random}; {@code tries} multiplies the
 * number of tries.
 */
public final class FixedSeed implements AroundPropertyHook {
  private static final String SEED = System.getProperty("seed", "1");
  private static final int TRIES = Integer.getInteger("tries", 1);

  @Override
  public PropagationMode propagateTo() {
    return PropagationMode.ALL_DESCENDANTS;
  }

  @Override
  public PropertyExecutionResult aroundProperty(
      PropertyLifecycleContext context, PropertyExecutor property) {
    PropertyAttributes attributes = context.attributes();
    if (!SEED.equals("random") && attributes.seed().isEmpty()) {
      attributes.setSeed(SEED);
    }
    attributes.tries().ifPresent(tries -> attributes.setTries(tries * TRIES));
    return property.execute();
  }
}
