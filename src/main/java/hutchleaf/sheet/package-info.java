/** Paper, margins, card grids and folds, and counting sheets: arithmetic in millimetres, nothing drawn. */
@NullMarked
package hutchleaf.sheet;

import org.jspecify.annotations.NullMarked;
