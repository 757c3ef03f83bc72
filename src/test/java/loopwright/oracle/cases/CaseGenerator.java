package loopwright.oracle.cases;

import static loopwright.oracle.cases.Dice.hmm;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import loopwright.catalog.Catalog;
import loopwright.catalog.basis.Axis;
import loopwright.catalog.basis.Face;
import loopwright.catalog.basis.Pattern;
import loopwright.catalog.brief.Brief;
import loopwright.catalog.chassis.Chassis;
import loopwright.catalog.chassis.Inside;
import loopwright.catalog.chassis.Mod;
import loopwright.catalog.chassis.Mount;
import loopwright.catalog.chassis.Panel;
import loopwright.catalog.chassis.Shell;
import loopwright.catalog.part.Radiator;
import loopwright.oracle.OracleCase;

/**
 * Small whole catalogues drawn from a seed, laid out so that hundredths decide: stacks fill a length up to a small
 * slack, and thin plates, drives and slots take or give as much.
 */
public final class CaseGenerator {

    /** How long slots are. */
    public enum Mode {
        /** A few hundredths: every position can be walked. */
        TINY(1),
        /** Real millimetres. */
        SMALL(61);

        final int scale;

        Mode(int scale) {
            this.scale = scale;
        }
    }

    private static final List<String> TAGS = List.of(
            "port",
            "rad-a-width",
            "rad-b-width",
            "rad-a-overhang",
            "rad-b-overhang",
            "fan-a",
            "fan-b",
            "cover",
            "memory",
            "block",
            "card",
            "supply-a",
            "supply-b",
            "drive",
            "inset",
            "outside",
            "gasket",
            "seat",
            "box-1",
            "box-2",
            "drill");

    private static final Pattern ONE_80 = new Pattern(1, 80);

    private final PlusMinus plusMinus;
    private final Dice dice;
    private final int gap;
    private final CaseParts parts;
    private final CaseShape shape;
    private final List<CaseMount> mounts = new ArrayList<>();
    private int fanHmm;
    private Radiator radiator;
    private Pattern second = ONE_80;

    private CaseGenerator(long seed, Mode mode) {
        plusMinus = new PlusMinus(seed);
        gap = plusMinus.gapHmm();
        dice = new Dice(seed, mode.scale, TAGS, gap);
        parts = new CaseParts(dice);
        shape = dice.oneOf(List.of(
                CaseShape.ROOF_FLOOR,
                CaseShape.ROOF_FLOOR,
                CaseShape.ROOF_FLOOR,
                CaseShape.ROOF_SIDE,
                CaseShape.ROOF_SIDE,
                CaseShape.ROOF_SIDE,
                CaseShape.ROOF_SIDE_FLOOR,
                CaseShape.ROOF_SIDE_FLOOR,
                CaseShape.ROOF_FRONT,
                CaseShape.FRONT_FLOOR,
                CaseShape.ROOF_REAR,
                CaseShape.ROOF_FRONT_BESIDE,
                CaseShape.ROOF_FRONT_BESIDE));
        fanHmm = 1500 + dice.small(0, 3);
        radiator = stacks();
    }

    /** The case of a seed. */
    public static OracleCase generate(long seed, Mode mode) {
        return new CaseGenerator(seed, mode).draw(seed);
    }

    private Radiator stacks() {
        int port = 800 + dice.small(0, 6);
        int blank = dice.chance(85) ? port + dice.small(-4, 4) : 500;
        int width = 8000 + 2 * dice.small(0, 2);
        int thick = 2000 + dice.small(0, 4);
        Radiator first = parts.radiator("rad-a", ONE_80, width, thick, port, blank);
        parts.fan("fan-a", 80, fanHmm);
        boolean row3 = shape.faces.size() == 3;
        int kind = row3 ? 3 : dice.between(0, 3);
        if (kind == 0) {
            parts.radiator(
                    "rad-b",
                    ONE_80,
                    width - 2 * dice.small(0, 2),
                    thick + dice.small(-5, 5),
                    port,
                    blank + dice.small(-3, 3));
        } else if (kind == 1) {
            second = new Pattern(1, 92);
            parts.radiator(
                    "rad-b",
                    second,
                    9200,
                    thick,
                    Math.max(0, port - 600 + dice.small(-3, 3)),
                    Math.max(0, blank - 600));
            parts.fan("fan-b", 92, fanHmm);
        } else if (kind == 2) {
            parts.fan("fan-b", 80, fanHmm + dice.small(-4, 4));
        }
        parts.rest();
        return first;
    }

    private OracleCase draw(long seed) {
        for (Face face : shape.faces) {
            mounts.add(new CaseMount(dice, face, CaseShape.lengthwise(face)));
        }
        Radiator.Body body = radiator.body();
        int length =
                8000 + body.portOverhangMm().valueHmm() + body.blankOverhangMm().valueHmm();
        int width = Math.max(8000, body.widthMm().valueHmm());
        CaseRoom room = room(length, width, body.thicknessMm().valueHmm());
        CaseInside inside = new CaseInside(dice, parts, room, shape, mounts);
        List<Mount> built = new ArrayList<>();
        for (CaseMount mount : mounts) {
            List<Mount.Seat> seats = new ArrayList<>();
            if (!dice.chance(7)) {
                seats.add(mount.seat(dice, ONE_80, 0, "seat"));
            }
            if (!second.equals(ONE_80) && dice.chance(40)) {
                seats.add(mount.seat(dice, second, 0, ""));
            }
            mount.airless = dice.chance(8);
            mount.outsideHmm = mount.face == Face.FLOOR && dice.chance(60) ? 700 : 2000;
            built.add(mount.mount(dice, seats));
        }
        inside.fill(fanHmm + body.thicknessMm().valueHmm());
        CaseOffers offers = new CaseOffers(dice, parts, mounts, second);
        List<Mod> mods = offers.mods(inside, fanHmm, body.thicknessMm().valueHmm(), length);
        List<Panel> panels = mounts.stream()
                .map(m -> new Panel(
                        "panel-" + m.id,
                        m.face,
                        hmm(80),
                        Panel.Material.STEEL,
                        new Panel.Patch(Optional.empty(), Optional.empty(), Optional.empty()),
                        new Panel.Features(List.of(), List.of(), List.of(), List.of())))
                .toList();
        Shell shell = new Shell(
                new Shell.Interior(hmm(inside.widthHmm()), hmm(room.depthHmm()), hmm(room.heightHmm())),
                10,
                3,
                panels,
                Optional.empty());
        Inside all = new Inside(inside.bay(), inside.obstructions, inside.removables, inside.places);
        Chassis chassis =
                new Chassis("chassis-g", "chassis-g", Optional.empty(), CaseParts.BUY, shell, all, built, mods);
        Catalog catalog = plusMinus.of(parts.catalog(chassis));
        Brief brief = CaseBrief.draw(dice, parts, mods, plusMinus.refusesTight());
        Catalog powered = new CaseElectric(seed).of(catalog, brief);
        return new OracleCase(seed, powered, powered.chassis(chassis.id()), brief);
    }

    /** Fixes the zone's size and the centres from the reference stack. */
    private CaseRoom room(int length, int width, int thick) {
        int n = mounts.size();
        int half = length / 2;
        int need = dice.chance(90) ? parts.fanNeedHmm : 0;
        int slack = dice.small(-6, 8);
        int first = mounts.get(0).depthHmm(fanHmm, thick);
        int last = mounts.get(n - 1).depthHmm(fanHmm, thick);
        if (shape.isRow()) {
            int depth = n * length + slack + (n + 1) * gap;
            int height = shape == CaseShape.ROOF_FLOOR
                    ? first + last + gap - dice.oneOf(List.of(500, 900, 900, dice.small(-5, 5)))
                    : width + need + dice.small(0, 4) + 2 * gap;
            for (int i = 0; i < n; i++) {
                CaseMount mount = mounts.get(i);
                int from = i == n - 1 ? depth - length - gap : i * length + (i + 1) * gap;
                mount.centreUHmm = from + half + dice.small(-1, 4) - (i == n - 1 ? dice.small(0, 4) : 0);
                mount.centreVHmm = mount.face == Face.LEFT
                        ? height - width / 2 - need - dice.small(0, 2) - gap
                        : width / 2 + need + dice.small(0, 2) + gap;
            }
            return new CaseRoom(width + need + 2 * gap, depth, height, dice);
        }
        boolean beside = shape == CaseShape.ROOF_FRONT_BESIDE;
        boolean frontFirst = shape == CaseShape.FRONT_FLOOR;
        int upright = frontFirst ? first : last;
        int lying = frontFirst ? last : first;
        int less = beside ? dice.oneOf(List.of(300, 900)) : 0;
        int depth = length + upright + dice.small(-3, 10) - less + 2 * gap;
        int height = length + lying + dice.small(-3, 10) - less + 2 * gap;
        for (int i = 0; i < n; i++) {
            CaseMount mount = mounts.get(i);
            Face pin = shape.pins.get(i);
            int full = mount.lengthwise == Axis.Y ? depth : height;
            mount.centreUHmm = pin.isHigh() ? full - half - dice.small(-2, 4) - gap : half + dice.small(-2, 4) + gap;
            mount.centreVHmm = width / 2 + need + dice.small(0, 2) + gap;
            mount.longSideways = beside;
        }
        if (beside) {
            int at = dice.between(0, 1);
            mounts.get(at).centreVHmm = width + slack + width / 2 + need - dice.small(0, 4) + 2 * gap;
        }
        return new CaseRoom((beside ? 2 * width + slack + gap : width) + need + 2 * gap, depth, height, dice);
    }
}
