/** A show date and a deck of cards become a day-by-day plan; boxes for study without a date. */
@NullMarked
package hutchleaf.study;

import org.jspecify.annotations.NullMarked;
