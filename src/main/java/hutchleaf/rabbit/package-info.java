/** What a judge should find on one rabbit on one show day, how a member says it, and the cards and questions it makes. */
@NullMarked
package hutchleaf.rabbit;

import org.jspecify.annotations.NullMarked;
