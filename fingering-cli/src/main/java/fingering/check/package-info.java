/**
 * Many scores checked at once, and what is told of them in data: findings put together, JSON, and
 * the format in which editors and build servers take findings.
 *
 * <p>It knows {@link fingering.playability} and what that rests on; nothing of options, nor of
 * pages. No method takes or returns null unless it says so. Files are checked by several threads
 * that share one checker; reports get them in order, from one thread.
 */
package fingering.check;
