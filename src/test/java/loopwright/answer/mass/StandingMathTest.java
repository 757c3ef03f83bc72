package loopwright.answer.mass;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import loopwright.answer.mass.SpringFeet.Place;
import org.junit.jupiter.api.Test;

/** Centre of mass, loads of feet and tipping against cases worked by hand, sums over points, and invariants. */
class StandingMathTest {

    private static final int SEEDS = 300;

    private static final List<Place> SQUARE =
            List.of(new Place(0, 0), new Place(200, 0), new Place(0, 300), new Place(200, 300));

    private static Mass mass(double kg, double x, double y, double z) {
        return new Mass("m", kg, new Mass.Spot(x, y, z));
    }

    @Test
    void twoMassesBalanceWhereALeverDoes() {
        Masses sum = Masses.of(List.of(mass(1, 0, 0, 0), mass(3, 100, 20, 40)));
        assertThat(sum.massKg()).isEqualTo(4);
        assertThat(sum.centre()).isEqualTo(new Mass.Spot(75, 15, 30));
    }

    @Test
    void refusesNothing() {
        assertThatThrownBy(() -> Masses.of(List.of())).hasMessageContaining("more than 0 kg");
    }

    /** Boxes of one density, cut into many points: the sum over the points is the sum over the boxes. */
    @Test
    void boxesWeighAsTheirPointsDo() {
        for (long seed = 0; seed < SEEDS; seed++) {
            Random dice = new Random(seed);
            List<Mass> boxes = new ArrayList<>();
            List<Mass> points = new ArrayList<>();
            for (int b = 0; b < 4; b++) {
                double[] from = {dice.nextInt(200), dice.nextInt(300), dice.nextInt(400)};
                double[] size = {10 + dice.nextInt(90), 10 + dice.nextInt(90), 10 + dice.nextInt(90)};
                double kg = 0.1 + dice.nextDouble();
                boxes.add(mass(kg, from[0] + size[0] / 2, from[1] + size[1] / 2, from[2] + size[2] / 2));
                int n = 6;
                for (int i = 0; i < n * n * n; i++) {
                    int row = i / n % n;
                    int layer = i / n / n;
                    points.add(mass(
                            kg / (n * n * n),
                            from[0] + size[0] * (i % n + 0.5) / n,
                            from[1] + size[1] * (row + 0.5) / n,
                            from[2] + size[2] * (layer + 0.5) / n));
                }
            }
            Masses whole = Masses.of(boxes);
            Masses cut = Masses.of(points);
            assertThat(cut.massKg()).as("seed %s", seed).isCloseTo(whole.massKg(), within(1e-9));
            assertThat(cut.centre().xMm())
                    .as("seed %s", seed)
                    .isCloseTo(whole.centre().xMm(), within(1e-6));
            assertThat(cut.centre().yMm())
                    .as("seed %s", seed)
                    .isCloseTo(whole.centre().yMm(), within(1e-6));
            assertThat(cut.centre().zMm())
                    .as("seed %s", seed)
                    .isCloseTo(whole.centre().zMm(), within(1e-6));
        }
    }

    @Test
    void aCentreInTheMiddleLoadsFourFeetAlike() {
        assertThat(SpringFeet.loadsKg(SQUARE, 12, new Place(100, 150)))
                .allSatisfy(l -> assertThat(l).isCloseTo(3, within(1e-12)));
    }

    /** By hand: 40 mm to the right of the middle is 0.4 of half the width: 0.7 right, 0.3 left, halved over front and rear. */
    @Test
    void aCentreAsideLoadsThatSide() {
        List<Double> loads = SpringFeet.loadsKg(SQUARE, 10, new Place(140, 150));
        assertThat(loads.get(0)).isCloseTo(1.5, within(1e-12));
        assertThat(loads.get(1)).isCloseTo(3.5, within(1e-12));
        assertThat(loads.get(2)).isCloseTo(1.5, within(1e-12));
        assertThat(loads.get(3)).isCloseTo(3.5, within(1e-12));
    }

    /** By hand: the moments about the front edge and about the left edge give the rear foot and the right foot. */
    @Test
    void threeFeetAreStatics() {
        List<Place> feet = List.of(new Place(0, 0), new Place(200, 0), new Place(100, 300));
        List<Double> loads = SpringFeet.loadsKg(feet, 9, new Place(110, 100));
        assertThat(loads.get(2)).isCloseTo(3, within(1e-12));
        assertThat(loads.get(1)).isCloseTo((9 * 110 - 3 * 100) / 200.0, within(1e-12));
        assertThat(loads.get(0)).isCloseTo(9 - 3 - 3.45, within(1e-12));
    }

    /** Far in a corner the plane would pull at the foot across: that foot lifts off, and three carry all. */
    @Test
    void aFootDoesNotPull() {
        List<Double> loads = SpringFeet.loadsKg(SQUARE, 10, new Place(180, 270));
        assertThat(loads.get(0)).isZero();
        assertThat(loads).allSatisfy(l -> assertThat(l).isNotNegative());
        assertThat(loads.stream().mapToDouble(l -> l).sum()).isCloseTo(10, within(1e-9));
    }

    @Test
    void loadsAddUpAndTheirMomentsMatchWhereverTheMachineIsTurned() {
        for (long seed = 0; seed < SEEDS; seed++) {
            Random dice = new Random(seed);
            List<Place> feet = new ArrayList<>();
            for (Place place : SQUARE) {
                feet.add(new Place(place.xMm() + dice.nextInt(60), place.yMm() + dice.nextInt(60)));
            }
            if (dice.nextBoolean()) {
                feet.remove(3);
            }
            double wx = 0;
            double wy = 0;
            double w = 0;
            for (Place place : feet) {
                double share = 0.2 + dice.nextDouble();
                w += share;
                wx += share * place.xMm();
                wy += share * place.yMm();
            }
            Place centre = new Place(wx / w, wy / w);
            double kg = 5 + 10 * dice.nextDouble();
            List<Double> loads = SpringFeet.loadsKg(feet, kg, centre);
            double sum = 0;
            double mx = 0;
            double my = 0;
            for (int i = 0; i < feet.size(); i++) {
                sum += loads.get(i);
                mx += loads.get(i) * feet.get(i).xMm();
                my += loads.get(i) * feet.get(i).yMm();
            }
            assertThat(sum).as("seed %s", seed).isCloseTo(kg, within(1e-9));
            assertThat(mx).as("seed %s", seed).isCloseTo(kg * centre.xMm(), within(1e-6));
            assertThat(my).as("seed %s", seed).isCloseTo(kg * centre.yMm(), within(1e-6));
            List<Double> turned = SpringFeet.loadsKg(
                    feet.stream().map(StandingMathTest::turned).toList(), kg, turned(centre));
            for (int i = 0; i < loads.size(); i++) {
                assertThat(turned.get(i)).as("seed %s", seed).isCloseTo(loads.get(i), within(1e-9));
            }
            Tipping.Edge edge = Tipping.least(feet, centre, 200);
            Tipping.Edge again =
                    Tipping.least(feet.stream().map(StandingMathTest::turned).toList(), turned(centre), 200);
            assertThat(again.angleDeg()).as("seed %s", seed).isCloseTo(edge.angleDeg(), within(1e-9));
        }
    }

    /** A quarter turn to the left and a move. */
    private static Place turned(Place place) {
        return new Place(500 - place.yMm(), 70 + place.xMm());
    }

    /** By hand: 100 mm from the edge, 100 mm high: 45 degrees; over it from outside: below 0. */
    @Test
    void tipsWhereTheCentreStandsOverTheEdge() {
        assertThat(Tipping.least(SQUARE, new Place(100, 150), 100).angleDeg()).isCloseTo(45, within(1e-9));
        assertThat(Tipping.least(SQUARE, new Place(-10, 150), 100).angleDeg()).isNegative();
        assertThatThrownBy(() ->
                        Tipping.least(List.of(new Place(0, 0), new Place(1, 1), new Place(2, 2)), new Place(1, 1), 100))
                .hasMessageContaining("one line");
    }

    @Test
    void twoLiftingPointsShareAsALeverDoes() {
        List<Place> points = List.of(new Place(0, 0), new Place(200, 0));
        assertThat(Stand.shares(points, 10, new Place(50, 30))).containsExactly(7.5, 2.5);
        assertThat(Stand.shares(points.subList(0, 1), 10, new Place(50, 30))).containsExactly(10.0);
    }
}
