/**
 * Many scores checked at once, and what is told of them in data: findings put together, JSON, and
 * the format in which editors and build servers take findings.
 */
package fingering.check;
