/** What the content tree holds, as records: topics, cards, questions, stops, score sheets, breeds, colours, divisions. */
@NullMarked
package hutchleaf.model;

import org.jspecify.annotations.NullMarked;
