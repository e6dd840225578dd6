/** What one reader gets, in printing order: the library cut to a level, nothing laid out yet. */
@NullMarked
package hutchleaf.edition;

import org.jspecify.annotations.NullMarked;
