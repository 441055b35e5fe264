/**
 * What can go wrong with files, said in one sentence each, and safe writing of texts.
 *
 * <p>Depends on no other package. No method takes or returns null. Nothing here keeps state.
 */
@NullMarked
package fingering.files;

import org.jspecify.annotations.NullMarked;
