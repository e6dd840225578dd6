/** Reads the Markdown tree into the library, gathering every mistake with its line. The only place that knows commonmark. */
@NullMarked
package hutchleaf.content;

import org.jspecify.annotations.NullMarked;
