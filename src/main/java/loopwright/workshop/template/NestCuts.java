package loopwright.workshop.template;

import java.util.ArrayList;
import java.util.List;
import loopwright.quantity.Hundredths;

/**
 * In which order the pieces of a nest are cut: the shelves off the stock, then the pieces off each shelf, then what is
 * lower than its shelf to its height. Each cut goes right across what is in hand.
 */
public final class NestCuts {

    private NestCuts() {}

    /**
     * One cut; the blade goes beside the line, on the side away from the stock's corner.
     *
     * @param sheet of the stock, from 1
     * @param level whether it runs along the length of the stock, at a height; else upright
     * @param atHmm the edge of what is cut off: from the lower edge of the stock, or from its left
     * @param fromHmm where it begins, along its way
     * @param toHmm where it ends
     */
    public record Cut(int sheet, boolean level, int atHmm, int fromHmm, int toHmm) {

        /** As it is read at the saw. */
        String words() {
            return "sheet " + sheet + ", " + Hundredths.text(atHmm)
                    + (level ? " from the lower edge" : " from the left") + ", over " + Hundredths.text(toHmm - fromHmm)
                    + " mm";
        }
    }

    /** Every cut of a nest, sheet by sheet. */
    public static List<Cut> of(Nest nest) {
        List<Cut> out = new ArrayList<>();
        for (int sheet = 1; sheet <= nest.sheets(); sheet++) {
            int number = sheet;
            List<Nest.Laid> here =
                    nest.laid().stream().filter(l -> l.sheet() == number).toList();
            List<Integer> shelves =
                    here.stream().map(Nest.Laid::yHmm).distinct().sorted().toList();
            for (int y : shelves) {
                List<Nest.Laid> shelf = here.stream()
                        .filter(l -> l.yHmm() == y)
                        .sorted((a, b) -> Integer.compare(a.xHmm(), b.xHmm()))
                        .toList();
                shelf(out, nest, shelf);
            }
        }
        return out;
    }

    private static void shelf(List<Cut> out, Nest nest, List<Nest.Laid> shelf) {
        int sheet = shelf.get(0).sheet();
        int low = shelf.get(0).yHmm();
        int top = shelf.stream().mapToInt(NestCuts::top).max().orElse(low);
        if (top < nest.widthHmm()) {
            out.add(new Cut(sheet, /* level= */ true, top, 0, nest.lengthHmm()));
        }
        for (Nest.Laid laid : shelf) {
            int right = laid.xHmm() + laid.piece().lengthHmm();
            if (right < nest.lengthHmm()) {
                out.add(new Cut(sheet, /* level= */ false, right, low, top));
            }
            if (top(laid) < top) {
                out.add(new Cut(sheet, /* level= */ true, top(laid), laid.xHmm(), right));
            }
        }
    }

    private static int top(Nest.Laid laid) {
        return laid.yHmm() + laid.piece().widthHmm();
    }
}
