/** Editions to XHTML through templates. The only place that knows Freemarker. */
@NullMarked
package hutchleaf.page;

import org.jspecify.annotations.NullMarked;
