/** What is fair at the judge's table: shares of a score sheet, points of an answer, sets of questions. Nothing is laid out. */
@NullMarked
package hutchleaf.contest;

import org.jspecify.annotations.NullMarked;
