/** Reads a club's folder: what the leader writes in {@code club.md}, and the roster {@code members.csv}. */
@NullMarked
package hutchleaf.club;

import org.jspecify.annotations.NullMarked;
