/** What can be wrong with what an author wrote, where, and how to mend it. Every other stage may use it. */
@NullMarked
package hutchleaf.problem;

import org.jspecify.annotations.NullMarked;
