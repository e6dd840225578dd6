/** Turns XHTML into finished PDF: fonts, figures, fitting, tags, outline and metadata. */
@NullMarked
package hutchleaf.press;

import org.jspecify.annotations.NullMarked;
