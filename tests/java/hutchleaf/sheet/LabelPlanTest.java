package hutchleaf.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import hutchleaf.sheet.LabelPlan.Place;
import hutchleaf.sheet.LabelPlan.Side;
import hutchleaf.sheet.LabelPlan.Spot;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.RepeatedTest;
import org.junit.jupiter.api.RepetitionInfo;
import org.junit.jupiter.api.Test;

/** Words beside a figure: all millimetres. */
final class LabelPlanTest {
    private static final double WIDTH = 100;
    private static final double HEIGHT = 70;
    private static final double PITCH = 5;
    private static final double REACH = 5;

    private static List<Place> plan(Spot... parts) {
        return LabelPlan.of(List.of(parts), WIDTH, HEIGHT, PITCH, REACH);
    }

    @Test
    void aPartOnTheLeftHasItsWordOnTheLeftAtItsOwnHeight() {
        assertThat(plan(new Spot(20, 30), new Spot(80, 40)))
                .containsExactly(
                        new Place(0, Side.LEFT, new Spot(-REACH, 30), new Spot(20, 30)),
                        new Place(1, Side.RIGHT, new Spot(WIDTH + REACH, 40), new Spot(80, 40)));
    }

    @Test
    void wordsOfOneColumnKeepTheirDistance() {
        List<Place> places = plan(new Spot(20, 30), new Spot(22, 31), new Spot(80, 10), new Spot(90, 60));
        assertThat(places.get(1).port().y() - places.get(0).port().y()).isEqualTo(PITCH);
    }

    @Test
    void aWordNearTheEdgeStaysBesideTheFigure() {
        assertThat(plan(new Spot(20, 0)).get(0).port().y()).isEqualTo(PITCH / 2);
        assertThat(plan(new Spot(20, HEIGHT)).get(0).port().y()).isEqualTo(HEIGHT - PITCH / 2);
    }

    @RepeatedTest(200)
    void everyPartHasOneWordAndNoTwoLinesCross(RepetitionInfo repetition) {
        int seed = repetition.getCurrentRepetition();
        Random random = new Random(seed);
        List<Spot> parts = new ArrayList<>();
        int count = 1 + random.nextInt(24);
        for (int i = 0; i < count; i++) {
            parts.add(new Spot(random.nextDouble() * WIDTH, random.nextDouble() * HEIGHT));
        }
        List<Place> places = LabelPlan.of(parts, WIDTH, HEIGHT, PITCH, REACH);
        assertThat(places)
                .as("seed " + seed)
                .extracting(Place::index)
                .containsExactlyInAnyOrderElementsOf(
                        IntStream.range(0, count).boxed().toList());
        for (Place place : places) {
            assertThat(place.end()).as("seed " + seed).isEqualTo(parts.get(place.index()));
            for (Place other : places) {
                if (place.index() < other.index() && place.side() == other.side()) {
                    assertThat(cross(place, other))
                            .as("seed %d: %s and %s", seed, place, other)
                            .isFalse();
                    assertThat(Math.abs(place.port().y() - other.port().y()))
                            .as("seed %d: %s and %s", seed, place, other)
                            .isGreaterThanOrEqualTo(PITCH - 1e-9);
                }
            }
        }
    }

    private static boolean cross(Place one, Place other) {
        return turn(one.port(), one.end(), other.port()) * turn(one.port(), one.end(), other.end()) < -1e-9
                && turn(other.port(), other.end(), one.port()) * turn(other.port(), other.end(), one.end()) < -1e-9;
    }

    private static double turn(Spot a, Spot b, Spot c) {
        return (b.x() - a.x()) * (c.y() - a.y()) - (b.y() - a.y()) * (c.x() - a.x());
    }
}
