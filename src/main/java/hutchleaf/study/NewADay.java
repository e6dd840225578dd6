package hutchleaf.study;

import hutchleaf.model.Level;

/**
 * How many new cards a day a level takes.
 *
 * <p>Children in grades 3 and 4 kept 4.05 new facts a session (standard deviation 0.71) when they learnt at their own
 * rate, and sets of that size did better than sets of 2 or of 8: Assessment for Effective Intervention 41 (2016)
 * 131-140. So junior usually takes 4, and 5 (a deviation more, rounded) when days are short. The other levels have no
 * published number: 2 to 3 for the youngest, 6 to 8 from about 14 and the step between are our own choice.
 *
 * @param usual when there are days enough
 * @param most when there are not
 */
record NewADay(int usual, int most) {
    static NewADay of(Level level) {
        return switch (level) {
            case PRIMARY -> new NewADay(2, 3);
            case JUNIOR -> new NewADay(4, 5);
            case INTERMEDIATE -> new NewADay(5, 6);
            case SENIOR -> new NewADay(6, 8);
        };
    }

    /** No more than so many, and never less than one. */
    NewADay within(int limit) {
        int top = Math.max(1, limit);
        return new NewADay(Math.min(usual, top), Math.min(most, top));
    }
}
