package loopwright.answer.cable;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import loopwright.answer.Inspection;
import loopwright.answer.cable.CablePlan.CableUse;
import loopwright.answer.cable.CablePlan.HoleUse;
import loopwright.answer.cable.CablePlan.Parking;
import loopwright.answer.cable.CablePlan.Rooms;
import loopwright.answer.cable.CablePlan.Straight;
import loopwright.answer.cable.CablePlan.Straightness;
import loopwright.catalog.basis.Box;
import loopwright.catalog.chassis.Wiring;
import loopwright.catalog.part.Board;
import loopwright.catalog.part.GraphicsCard;
import loopwright.catalog.part.Plug;
import loopwright.catalog.standard.Cabling;
import loopwright.fit.rules.Role;
import loopwright.geometry.SpaceBox;
import loopwright.power.cable.CableVolume;
import loopwright.power.cable.Hole;

/** What goes through the holes, lies behind the tray and is put away; and the room over a 16-pin plug. */
final class CableRooms {

    private static final int HMM_PER_MM = 100;

    private final Inspection inspection;
    private final Cabling cabling;
    private final WaysInside ways;

    CableRooms(Inspection inspection, Cabling cabling, WaysInside ways) {
        this.inspection = inspection;
        this.cabling = cabling;
        this.ways = ways;
    }

    List<HoleUse> holes(List<CableUse> uses, Map<Integer, Set<String>> holesOf) {
        List<HoleUse> out = new ArrayList<>();
        for (Hole hole : ways.holes()) {
            List<CableUse> through = uses.stream()
                    .filter(u -> holesOf.getOrDefault(u.number(), Set.of()).contains(hole.id()))
                    .toList();
            double areaMm2 = through.stream()
                    .flatMap(u -> cabling.find(u.plug()).stream())
                    .mapToDouble(CableVolume::areaMm2)
                    .sum();
            double fill = through.isEmpty() ? 0 : areaMm2 / hole.areaMm2();
            out.add(new HoleUse(
                    hole,
                    through.stream().map(CableUse::number).toList(),
                    fill,
                    fill > cabling.bundle().fillShareMax()));
        }
        return out;
    }

    Rooms rooms(List<CableUse> uses, Map<Integer, Set<String>> holesOf) {
        Optional<Wiring> wiring = inspection.fitCase().chassis().wiring();
        Optional<Integer> depth =
                wiring.map(Wiring::behindTrayMm).filter(d -> !d.isUnknown()).map(d -> d.valueHmm());
        List<Integer> tooThick = uses.stream()
                .filter(u -> ways.holes().stream()
                        .anyMatch(h -> ways.isInTray(h)
                                && holesOf.getOrDefault(u.number(), Set.of()).contains(h.id())))
                .filter(u -> depth.isPresent()
                        && cabling.find(u.plug()).stream().anyMatch(p -> p.bundleMm() * HMM_PER_MM > depth.get()))
                .map(CableUse::number)
                .toList();
        List<SpaceBox> filled = ways.bodies().stream()
                .flatMap(b -> WaysInside.solid(b).stream())
                .toList();
        List<Parking> parking = wiring.map(Wiring::parking).orElse(List.of()).stream()
                .map(p -> new Parking(p.title(), CableVolume.freeL(box(p.title(), p.box()), filled)))
                .toList();
        boolean flatOnly =
                depth.map(d -> d < cabling.bundle().flatBelowMm() * HMM_PER_MM).orElse(false);
        return new Rooms(depth, flatOnly, tooThick, parking);
    }

    private static SpaceBox box(String title, Box box) {
        return new SpaceBox(
                title,
                true,
                0,
                new SpaceBox.Reach(box.xMm().from().valueHmm(), box.xMm().to().valueHmm()),
                new SpaceBox.Reach(box.yMm().from().valueHmm(), box.yMm().to().valueHmm()),
                new SpaceBox.Reach(box.zMm().from().valueHmm(), box.zMm().to().valueHmm()));
    }

    /** The room over the card's 16-pin plug, where it has one. */
    Optional<Straight> straight(PlugEnds ends) {
        GraphicsCard card = inspection.build().chosen().the(Role.CARD, GraphicsCard.class);
        Board board = inspection.build().chosen().the(Role.BOARD, Board.class);
        if (card.power().sixteenPinPlugs() == 0) {
            return Optional.empty();
        }
        int free = ways.freeFrom(ends.cardTop(board, card), ends.bay().height());
        int straight = (int) Math.round(cabling.way().straightMm() * HMM_PER_MM);
        int plug = cabling.find(Plug.CARD_16)
                .map(p -> (int) Math.round(p.deepMm() * HMM_PER_MM))
                .orElse(0);
        Straightness verdict =
                free < straight ? Straightness.NO : free < straight + plug ? Straightness.TIGHT : Straightness.OK;
        return Optional.of(new Straight(free, straight, plug, verdict));
    }
}
