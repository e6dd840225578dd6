/** The commands: arguments, the whole run from top to bottom, messages and exit codes. */
@NullMarked
package hutchleaf.cli;

import org.jspecify.annotations.NullMarked;
