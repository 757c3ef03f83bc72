package loopwright.fit;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import loopwright.catalog.basis.SizeMm;
import loopwright.catalog.part.Block;
import loopwright.catalog.part.Board;
import loopwright.catalog.part.GraphicsCard;
import loopwright.catalog.part.Memory;
import loopwright.catalog.part.Pump;
import loopwright.catalog.part.Reservoir;
import loopwright.catalog.part.Supply;
import loopwright.fit.rules.Chosen;
import loopwright.fit.rules.Role;
import loopwright.quantity.Dimension;

/**
 * Choices of parts that take the same room, and are known as well.
 *
 * @param id number among the sets of one grouping; sets of one grouping are told apart by it
 * @param example the first of them
 * @param choices all of them, in the order of the part model
 */
public record PartSet(int id, Chosen example, List<Chosen> choices) {

    @Override
    public boolean equals(Object other) {
        return other instanceof PartSet set && id == set.id;
    }

    @Override
    public int hashCode() {
        return id;
    }

    /**
     * Every choice of parts of a case that goes together, grouped by the room they take; where tight places are asked
     * about, also by how far their dimensions may be off.
     */
    public static List<PartSet> all(FitCase fitCase) {
        return group(new PartModel(fitCase).all(), fitCase.strictness());
    }

    /** Groups choices by the room their parts take. */
    static List<PartSet> group(List<Chosen> choices, Strictness strictness) {
        boolean spread = strictness != Strictness.NOMINAL;
        Map<String, List<Chosen>> byRoom = new LinkedHashMap<>();
        for (Chosen chosen : choices) {
            byRoom.computeIfAbsent(room(chosen) + (spread ? plusMinus(chosen) : ""), r -> new ArrayList<>())
                    .add(chosen);
        }
        List<PartSet> out = new ArrayList<>();
        byRoom.values().forEach(g -> out.add(new PartSet(out.size(), g.get(0), List.copyOf(g))));
        return List.copyOf(out);
    }

    private static String room(Chosen chosen) {
        GraphicsCard.Body card = chosen.the(Role.CARD, GraphicsCard.class).body();
        Supply supply = chosen.the(Role.SUPPLY, Supply.class);
        Pump pump = chosen.the(Role.PUMP, Pump.class);
        Block block = chosen.the(Role.BLOCK, Block.class);
        return chosen.the(Role.BOARD, Board.class).id() + "|"
                + text(chosen.the(Role.MEMORY, Memory.class).heightMm())
                + "|" + text(block.body()) + text(block.portRoomMm())
                + "|" + text(card.lengthMm()) + text(card.thicknessMm()) + text(card.heightMm())
                + text(card.topRoomMm()) + text(card.topRoomLengthMm())
                + "|" + supply.form() + text(supply.body()) + text(supply.plugRoomMm())
                + "|" + pump.kind() + text(pump.body()) + text(pump.water().portRoomMm())
                + "|"
                + chosen.find(Role.RESERVOIR, Reservoir.class)
                        .map(r -> text(r.body()) + text(r.portRoomMm()))
                        .orElse("-");
    }

    private static String plusMinus(Chosen chosen) {
        return dimensions(chosen).stream()
                .map(d -> Integer.toString(d.plusMinusHmm()))
                .collect(Collectors.joining(",", "|", ""));
    }

    /** The dimensions of parts that differ from set to set and may be off; rooms kept free are as they are. */
    private static List<Dimension> dimensions(Chosen chosen) {
        GraphicsCard.Body card = chosen.the(Role.CARD, GraphicsCard.class).body();
        List<Dimension> out = new ArrayList<>(List.of(
                chosen.the(Role.MEMORY, Memory.class).heightMm(),
                card.lengthMm(),
                card.thicknessMm(),
                card.heightMm()));
        add(out, chosen.the(Role.BLOCK, Block.class).body());
        add(out, chosen.the(Role.SUPPLY, Supply.class).body());
        add(out, chosen.the(Role.PUMP, Pump.class).body());
        chosen.find(Role.RESERVOIR, Reservoir.class).ifPresent(r -> add(out, r.body()));
        return out;
    }

    private static void add(List<Dimension> out, SizeMm size) {
        out.addAll(List.of(size.lengthMm(), size.widthMm(), size.heightMm()));
    }

    private static String text(SizeMm size) {
        return text(size.lengthMm()) + text(size.widthMm()) + text(size.heightMm());
    }

    private static String text(Dimension dimension) {
        String spread = "~" + dimension.plusMinusHmm() + dimension.distribution();
        return (dimension.isUnknown() ? "?" : dimension.valueHmm() + spread) + ",";
    }

    /**
     * Whether this takes no more room than the other anywhere, so that wherever the other fits, this one does, with
     * margins no smaller. Only said of parts whose dimensions are all known.
     *
     * @param strictness where it is not nominal, no dimension may be off by what would let the other one fit better
     */
    boolean isWithin(PartSet other, Strictness strictness) {
        Chosen a = example;
        Chosen b = other.example;
        boolean sameBoard = a.the(Role.BOARD, Board.class).equals(b.the(Role.BOARD, Board.class));
        boolean sameCard = a.the(Role.CARD, GraphicsCard.class)
                .body()
                .equals(b.the(Role.CARD, GraphicsCard.class).body());
        return sameBoard
                && sameCard
                && heights(a, b)
                && blocks(a, b)
                && supplies(a, b)
                && loops(a, b)
                && spreads(a, b, strictness);
    }

    private static boolean spreads(Chosen a, Chosen b, Strictness strictness) {
        List<Dimension> ofA = dimensions(a);
        List<Dimension> ofB = dimensions(b);
        for (int i = 0; i < Math.min(ofA.size(), ofB.size()); i++) {
            int more = ofA.get(i).plusMinusHmm() - ofB.get(i).plusMinusHmm();
            boolean worse = switch (strictness) {
                case NOMINAL -> false;
                case NO_TIGHT -> more > 0;
                case BEST_CASE -> more < 0;
            };
            if (worse) {
                return false;
            }
        }
        return true;
    }

    private static boolean heights(Chosen a, Chosen b) {
        return atMost(
                a.the(Role.MEMORY, Memory.class).heightMm(),
                b.the(Role.MEMORY, Memory.class).heightMm());
    }

    private static boolean blocks(Chosen a, Chosen b) {
        Block x = a.the(Role.BLOCK, Block.class);
        Block y = b.the(Role.BLOCK, Block.class);
        return atMost(x.body(), y.body())
                && atMost(x.body().heightMm(), x.portRoomMm(), y.body().heightMm(), y.portRoomMm());
    }

    private static boolean supplies(Chosen a, Chosen b) {
        Supply x = a.the(Role.SUPPLY, Supply.class);
        Supply y = b.the(Role.SUPPLY, Supply.class);
        return x.form() == y.form()
                && atMost(x.body(), y.body())
                && atMost(x.body().lengthMm(), x.plugRoomMm(), y.body().lengthMm(), y.plugRoomMm());
    }

    private static boolean loops(Chosen a, Chosen b) {
        Pump x = a.the(Role.PUMP, Pump.class);
        Pump y = b.the(Role.PUMP, Pump.class);
        boolean pumps = x.kind() == y.kind()
                && atMost(x.body(), y.body())
                && atMost(
                        x.body().lengthMm(),
                        x.water().portRoomMm(),
                        y.body().lengthMm(),
                        y.water().portRoomMm());
        if (!pumps || x.kind() == Pump.Kind.PUMP_RESERVOIR) {
            return pumps;
        }
        Reservoir r = a.the(Role.RESERVOIR, Reservoir.class);
        Reservoir s = b.the(Role.RESERVOIR, Reservoir.class);
        return atMost(r.body(), s.body())
                && atMost(r.body().lengthMm(), r.portRoomMm(), s.body().lengthMm(), s.portRoomMm());
    }

    private static boolean atMost(SizeMm a, SizeMm b) {
        return atMost(a.lengthMm(), b.lengthMm())
                && atMost(a.widthMm(), b.widthMm())
                && atMost(a.heightMm(), b.heightMm());
    }

    private static boolean atMost(Dimension a, Dimension b) {
        return !a.isUnknown() && !b.isUnknown() && a.valueHmm() <= b.valueHmm();
    }

    private static boolean atMost(Dimension a, Dimension roomA, Dimension b, Dimension roomB) {
        return Stream.of(a, roomA, b, roomB).noneMatch(Dimension::isUnknown)
                && a.valueHmm() + roomA.valueHmm() <= b.valueHmm() + roomB.valueHmm();
    }

    /** The sets that no other one is within, first of equals. */
    static List<PartSet> smallest(List<PartSet> sets, Strictness strictness) {
        List<PartSet> out = new ArrayList<>();
        for (PartSet set : sets) {
            if (out.stream().noneMatch(s -> s.isWithin(set, strictness))) {
                out.removeIf(s -> set.isWithin(s, strictness));
                out.add(set);
            }
        }
        return List.copyOf(out);
    }
}
