package hutchleaf.rabbit;

/** One thing a judge finds: known, or to be checked. */
public sealed interface Answer {
    /** Where it comes from, in plain words for print: {@code breed table}. */
    String basis();

    /**
     * What the tables and the dates give for sure.
     *
     * @param words as they are said, without a full stop: {@code dark brown}
     */
    record Known(String words, String basis) implements Answer {
        public Known {
            requireWords(words);
            requireWords(basis);
        }
    }

    /**
     * What the member looks up: printed as "check your breed standard", with a line to write on.
     *
     * @param ask what to look up: {@code eye colour}
     * @param basis why it is not known
     */
    record Check(String ask, String basis) implements Answer {
        public Check {
            requireWords(ask);
            requireWords(basis);
        }
    }

    private static void requireWords(String words) {
        if (words.isBlank()) {
            throw new IllegalArgumentException("an answer without words");
        }
    }
}
