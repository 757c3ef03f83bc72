package loopwright.oracle.brute;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import loopwright.catalog.Catalog;
import loopwright.catalog.basis.Pose;
import loopwright.catalog.basis.SizeMm;
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
        int thickness = r.hmm(catalog.practice().room().boardThicknessMm());
        r.posed(bay(), false, 0, r.hmm(outline.lengthMm()), 0, r.hmm(outline.widthMm()), -thickness, 0);
        for (Board.Zone z : board.zones()) {
            r.posed(
                    bay(),
                    z.room(),
                    r.hmm(z.lengthMm().from()),
                    r.hmm(z.lengthMm().to()),
                    r.hmm(z.widthMm().from()),
                    r.hmm(z.widthMm().to()),
                    r.hmm(z.heightMm().from()),
                    r.hmm(z.heightMm().to()));
        }
        return onBoard(r);
    }

    private BruteBody memory(Board board, Memory memory) {
        Ruler r = new Ruler();
        Board.MemoryBank bank = board.sockets().memory();
        r.posed(
                bay(),
                false,
                r.hmm(bank.lengthMm().from()),
                r.hmm(bank.lengthMm().to()),
                r.hmm(bank.widthMm().from()),
                r.hmm(bank.widthMm().to()),
                0,
                r.hmm(memory.heightMm()));
        return onBoard(r);
    }

    private BruteBody block(Board board, Block block) {
        Ruler r = new Ruler();
        int l = r.hmm(board.sockets().processorLengthMm());
        int w = r.hmm(board.sockets().processorWidthMm());
        int halfL = r.hmm(block.body().lengthMm()) / 2;
        int halfW = r.hmm(block.body().widthMm()) / 2;
        int h = r.hmm(block.body().heightMm());
        int top = h + r.hmm(block.portRoomMm());
        r.posed(bay(), false, l - halfL, l + halfL, w - halfW, w + halfW, 0, h);
        r.posed(bay(), true, l - halfL, l + halfL, w - halfW, w + halfW, h, top);
        return onBoard(r);
    }

    private BruteBody card(Board board, GraphicsCard card) {
        Ruler r = new Ruler();
        int slot = r.hmm(board.sockets().slotLengthMm());
        int end = slot + r.hmm(card.body().thicknessMm());
        int length = r.hmm(card.body().lengthMm());
        int height = r.hmm(card.body().heightMm());
        int topRoom = r.hmm(card.body().topRoomMm());
        r.posed(bay(), false, slot, end, 0, length, 0, height);
        if (topRoom > 0) {
            int from = length - r.hmm(card.body().topRoomLengthMm());
            r.posed(bay(), true, slot, end, from, length, height, height + topRoom);
        }
        return onBoard(r);
    }

    static BruteBody placed(Place place, SizeMm body, Dimension roomMm) {
        Ruler r = new Ruler();
        int l = r.hmm(body.lengthMm());
        int w = r.hmm(body.widthMm());
        int h = r.hmm(body.heightMm());
        r.posed(place.pose(), false, 0, l, 0, w, 0, h);
        r.posed(place.pose(), true, l, l + r.hmm(roomMm), 0, w, 0, h);
        return r.body(BruteBody.Sort.IN_PLACE, "", place.against(), place.touches());
    }
}
