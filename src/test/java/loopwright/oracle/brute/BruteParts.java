package loopwright.oracle.brute;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import loopwright.catalog.Catalog;
import loopwright.catalog.basis.Pose;
import loopwright.catalog.basis.SizeMm;
import loopwright.catalog.basis.Span;
import loopwright.catalog.chassis.Chassis;
import loopwright.catalog.chassis.Inside;
import loopwright.catalog.chassis.Mod;
import loopwright.catalog.chassis.Place;
import loopwright.catalog.part.Block;
import loopwright.catalog.part.Board;
import loopwright.catalog.part.GraphicsCard;
import loopwright.catalog.part.Memory;
import loopwright.catalog.standard.Standards;
import loopwright.quantity.Dimension;

/** Bodies of everything but the stacks. */
final class BruteParts {
    private static final Len NIL = Len.exact(0);

    private final Catalog catalog;
    private final Chassis chassis;

    BruteParts(Catalog catalog, Chassis chassis) {
        this.catalog = catalog;
        this.chassis = chassis;
    }

    List<BruteBody> chassisBodies(Set<String> mods) {
        List<BruteBody> out = new ArrayList<>();
        List<Mod> done =
                chassis.mods().stream().filter(m -> mods.contains(m.id())).toList();
        for (Inside.Obstruction o : chassis.inside().obstructions()) {
            out.add(asBuilt(o.id(), o.boxes()));
        }
        for (Inside.Removable r : chassis.inside().removables()) {
            if (done.stream().noneMatch(m -> m.effect().removes().contains(r.id()))) {
                out.add(asBuilt(r.id(), r.boxes()));
            }
        }
        for (Mod mod : done) {
            for (Inside.Obstruction o : mod.effect().adds()) {
                out.add(asBuilt(o.id(), o.boxes()));
            }
        }
        return out;
    }

    static BruteBody asBuilt(String id, List<loopwright.catalog.basis.Box> boxes) {
        Ruler ruler = new Ruler();
        boxes.forEach(ruler::box);
        return ruler.body(BruteBody.Sort.CHASSIS, id, List.of(), List.of());
    }

    List<BruteBody> boardBodies(Board board, Memory memory, Block block, GraphicsCard card) {
        return List.of(board(board), memory(board, memory), block(board, block), card(board, card));
    }

    private Pose bay() {
        return chassis.inside().board().pose();
    }

    private BruteBody onBoard(Ruler ruler) {
        Inside.BoardBay bay = chassis.inside().board();
        return ruler.body(BruteBody.Sort.ON_BOARD, "", bay.against(), bay.touches());
    }

    private BruteBody board(Board board) {
        Ruler r = new Ruler();
        Standards.BoardOutline outline = catalog.standards().boards().stream()
                .filter(o -> o.form() == board.form())
                .findFirst()
                .orElseThrow();
        Len below = r.len(catalog.practice().room().boardThicknessMm()).turned();
        r.posed(bay(), false, NIL, r.len(outline.lengthMm()), NIL, r.len(outline.widthMm()), below, NIL);
        for (Board.Zone z : board.zones()) {
            List<Len> six = new ArrayList<>();
            for (Span span : List.of(z.lengthMm(), z.widthMm(), z.heightMm())) {
                six.add(z.room() ? r.kept(span.from()) : r.len(span.from()));
                six.add(z.room() ? r.kept(span.to()) : r.len(span.to()));
            }
            r.posed(bay(), z.room(), six.toArray(Len[]::new));
        }
        return onBoard(r);
    }

    private BruteBody memory(Board board, Memory memory) {
        Ruler r = new Ruler();
        Board.MemoryBank bank = board.sockets().memory();
        r.posed(
                bay(),
                false,
                r.len(bank.lengthMm().from()),
                r.len(bank.lengthMm().to()),
                r.len(bank.widthMm().from()),
                r.len(bank.widthMm().to()),
                NIL,
                r.len(memory.heightMm()));
        return onBoard(r);
    }

    private BruteBody block(Board board, Block block) {
        Ruler r = new Ruler();
        Len l = r.len(board.sockets().processorLengthMm());
        Len w = r.len(board.sockets().processorWidthMm());
        Len halfL = r.len(block.body().lengthMm()).half();
        Len halfW = r.len(block.body().widthMm()).half();
        Len h = r.len(block.body().heightMm());
        Len top = h.plus(r.kept(block.portRoomMm()));
        r.posed(bay(), false, l.minus(halfL), l.plus(halfL), w.minus(halfW), w.plus(halfW), NIL, h);
        r.posed(bay(), true, l.minus(halfL), l.plus(halfL), w.minus(halfW), w.plus(halfW), h, top);
        return onBoard(r);
    }

    private BruteBody card(Board board, GraphicsCard card) {
        Ruler r = new Ruler();
        Len slot = r.len(board.sockets().slotLengthMm());
        Len end = slot.plus(r.len(card.body().thicknessMm()));
        Len length = r.len(card.body().lengthMm());
        Len height = r.len(card.body().heightMm());
        Len topRoom = r.kept(card.body().topRoomMm());
        r.posed(bay(), false, slot, end, NIL, length, NIL, height);
        if (topRoom.hmm() > 0) {
            Len from = length.minus(r.kept(card.body().topRoomLengthMm()));
            r.posed(bay(), true, slot, end, from, length, height, height.plus(topRoom));
        }
        return onBoard(r);
    }

    static BruteBody placed(Place place, SizeMm body, Dimension roomMm) {
        Ruler r = new Ruler();
        Len l = r.len(body.lengthMm());
        Len w = r.len(body.widthMm());
        Len h = r.len(body.heightMm());
        r.posed(place.pose(), false, NIL, l, NIL, w, NIL, h);
        r.posed(place.pose(), true, l, l.plus(r.kept(roomMm)), NIL, w, NIL, h);
        return r.body(BruteBody.Sort.IN_PLACE, "", place.against(), place.touches());
    }
}
