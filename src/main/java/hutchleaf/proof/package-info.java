/** The proofreader: the library and every edition of it in, findings out. */
@NullMarked
package hutchleaf.proof;

import org.jspecify.annotations.NullMarked;
