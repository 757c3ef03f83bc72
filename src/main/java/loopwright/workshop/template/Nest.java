package loopwright.workshop.template;

import java.util.ArrayList;
import java.util.List;
import loopwright.quantity.Hundredths;

/**
 * Pieces laid out on one kind of stock, shelf by shelf, so that each cut goes right across: guillotine cuts.
 *
 * <p>First fit by falling height; a piece is turned when it lies lower that way and fits. Not the best possible, but
 * good for the few pieces that a machine takes. Lengths: hundredths of a millimetre.
 *
 * @param lengthHmm of a sheet of stock
 * @param widthHmm of it
 * @param sawHmm what a cut takes away
 * @param laid where each piece lies
 * @param tooLarge pieces that no sheet holds
 */
public record Nest(int lengthHmm, int widthHmm, int sawHmm, List<Laid> laid, List<Piece> tooLarge) {

    /** A piece to be cut. */
    public record Piece(String id, int lengthHmm, int widthHmm) {
        Piece lying() {
            return lengthHmm >= widthHmm ? this : turned();
        }

        Piece turned() {
            return new Piece(id, /* lengthHmm= */ widthHmm, /* widthHmm= */ lengthHmm);
        }
    }

    /** A piece on a sheet of stock: its lower left corner. */
    public record Laid(Piece piece, int sheet, int xHmm, int yHmm) {}

    /** A row of pieces. */
    private static final class Shelf {
        private final int sheet;
        private final int yHmm;
        private final int heightHmm;
        private final List<Laid> pieces = new ArrayList<>();

        private Shelf(int sheet, int yHmm, int heightHmm) {
            this.sheet = sheet;
            this.yHmm = yHmm;
            this.heightHmm = heightHmm;
        }

        private int usedHmm(int sawHmm) {
            return pieces.stream()
                    .mapToInt(l -> l.xHmm() + l.piece().lengthHmm() + sawHmm)
                    .max()
                    .orElse(0);
        }
    }

    /** Copies. */
    public Nest {
        laid = List.copyOf(laid);
        tooLarge = List.copyOf(tooLarge);
    }

    /** Lays pieces out with so much between them for the saw. */
    public static Nest of(int lengthHmm, int widthHmm, int sawHmm, List<Piece> pieces) {
        List<Piece> sorted = new ArrayList<>(pieces.stream().map(Piece::lying).toList());
        sorted.sort((a, b) -> a.widthHmm() != b.widthHmm()
                ? Integer.compare(b.widthHmm(), a.widthHmm())
                : Integer.compare(b.lengthHmm(), a.lengthHmm()));
        List<Shelf> shelves = new ArrayList<>();
        List<Piece> tooLarge = new ArrayList<>();
        for (Piece piece : sorted) {
            if (!lay(shelves, piece, new int[] {lengthHmm, widthHmm, sawHmm})
                    && !lay(shelves, piece.turned(), new int[] {lengthHmm, widthHmm, sawHmm})) {
                tooLarge.add(piece);
            }
        }
        List<Laid> laid = new ArrayList<>();
        shelves.forEach(s -> laid.addAll(s.pieces));
        return new Nest(lengthHmm, widthHmm, sawHmm, laid, tooLarge);
    }

    private static boolean lay(List<Shelf> shelves, Piece piece, int[] stock) {
        if (piece.lengthHmm() > stock[0] || piece.widthHmm() > stock[1]) {
            return false;
        }
        for (Shelf shelf : shelves) {
            if (piece.widthHmm() <= shelf.heightHmm && shelf.usedHmm(stock[2]) + piece.lengthHmm() <= stock[0]) {
                shelf.pieces.add(new Laid(piece, shelf.sheet, shelf.usedHmm(stock[2]), shelf.yHmm));
                return true;
            }
        }
        int last = shelves.stream().mapToInt(s -> s.sheet).max().orElse(1);
        int y = shelves.stream()
                .filter(s -> s.sheet == last)
                .mapToInt(s -> s.yHmm + s.heightHmm + stock[2])
                .max()
                .orElse(0);
        boolean goesOn = y + piece.widthHmm() <= stock[1];
        Shelf shelf = new Shelf(goesOn ? last : last + 1, goesOn ? y : 0, piece.widthHmm());
        shelf.pieces.add(new Laid(piece, shelf.sheet, 0, shelf.yHmm));
        shelves.add(shelf);
        return true;
    }

    /** How many sheets of stock it takes. */
    public int sheets() {
        return laid.stream().mapToInt(Laid::sheet).max().orElse(0);
    }

    /** What is left over of the stock, square millimetres; saw cuts count as waste. */
    public double wasteSquareMm() {
        double used = laid.stream()
                .mapToDouble(l -> (double) l.piece().lengthHmm() * l.piece().widthHmm())
                .sum();
        return ((double) lengthHmm * widthHmm * sheets() - used) / (Hundredths.PER_MM * Hundredths.PER_MM);
    }

    /** The same in percent of the stock. */
    public double wastePercent() {
        double all = (double) lengthHmm * widthHmm * sheets() / (Hundredths.PER_MM * Hundredths.PER_MM);
        return all > 0 ? 100 * wasteSquareMm() / all : 0;
    }
}
