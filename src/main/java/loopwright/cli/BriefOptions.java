package loopwright.cli;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import loopwright.answer.Halt;
import loopwright.answer.WhatIf;
import loopwright.answer.WhatIfAnswer;
import loopwright.catalog.Catalog;
import loopwright.catalog.CatalogReader;
import loopwright.catalog.brief.Brief;
import loopwright.catalog.chassis.Chassis;
import loopwright.catalog.chassis.Mod;
import loopwright.catalog.chassis.Mount;
import loopwright.catalog.measure.Assumptions;
import loopwright.catalog.measure.Lengths;
import loopwright.catalog.measure.NotUnderstood;
import loopwright.catalog.measure.Replacement;
import loopwright.catalog.measure.Replacements;
import loopwright.catalog.measure.Settled;
import loopwright.paper.Origin;
import loopwright.paper.WhatIfText;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import picocli.CommandLine.Spec.Target;

/** What every command about a brief takes: the brief, the catalogue, the chassis, the format, the time. */
final class BriefOptions {

    /** How an answer is written. */
    enum Format {
        /** For people. */
        TABLE,
        /** For programs. */
        JSON,
        /** For spreadsheets. */
        CSV;

        @Override
        public String toString() {
            return name().toLowerCase(Locale.ROOT);
        }
    }

    @Spec(Target.MIXEE)
    private CommandSpec spec = CommandSpec.create();

    @Parameters(paramLabel = "BRIEF", description = "The brief, a YAML file.")
    private Path brief = Path.of("");

    @Option(
            names = "--catalog",
            paramLabel = "DIR",
            description = "Folder of the catalogue. Default: catalogs, beside the folder of the brief.")
    private Optional<Path> catalog = Optional.empty();

    @Option(
            names = "--chassis",
            paramLabel = "ID",
            description = "Only this chassis; may be given again. Default: those of the brief, one after the other.")
    private List<String> chassis = List.of();

    @Option(
            names = "--format",
            paramLabel = "FORMAT",
            defaultValue = "table",
            description = "table (for people), json (for programs) or csv (for spreadsheets). Default: table.")
    private Format format = Format.TABLE;

    @Option(
            names = "--time",
            paramLabel = "SECONDS",
            description = "Stop after so many seconds; the answer so far is marked incomplete.")
    private Optional<Double> seconds = Optional.empty();

    @Option(
            names = "--readings",
            paramLabel = "FILE",
            description = "What was measured: a file of readings; they take the place of the catalogue's lengths."
                    + " May be given again.")
    private List<Path> readings = List.of();

    @Option(
            names = "--assume",
            paramLabel = "WHAT=VALUE",
            description = "What if a length were another: card.length=+3mm, gpu-a.length=305mm. WHAT is an id or a kind"
                    + " (radiator, fan, card, ...) and a field. May be given again.")
    private List<String> assumptions = List.of();

    /** A brief read against its catalogue, the chassis that are asked about, and what is overridden, if anything is. */
    record Asked(Catalog catalog, Brief brief, List<Chassis> chassis, Optional<WhatIf> whatIf) {}

    /** Reads the files and checks the ids. */
    Asked read() {
        return read(List.of());
    }

    /** The same with more files of readings. */
    Asked read(List<Path> more) {
        seconds.filter(s -> !(s > 0 && s <= 1_000_000)).ifPresent(s -> {
            throw new ParameterException(
                    spec.commandLine(), "--time must be above 0 and at most 1000000 seconds but was " + s);
        });
        CatalogReader.requireReadable(brief);
        List<Path> read = new ArrayList<>(readings);
        read.addAll(more);
        Catalog plain = CatalogReader.read(folder());
        Optional<WhatIf> whatIf =
                read.isEmpty() && assumptions.isEmpty() ? Optional.empty() : Optional.of(whatIf(read, plain));
        Catalog changed = whatIf.map(WhatIf::after).orElse(plain);
        Brief wanted = CatalogReader.readBrief(brief, changed);
        KnownId known = known(
                "chassis", changed.all(Chassis.class).stream().map(Chassis::id).toList());
        List<String> ids = chassis.isEmpty() ? wanted.chassis() : chassis;
        ids.forEach(known::require);
        return new Asked(
                changed, wanted, ids.stream().distinct().map(changed::chassis).toList(), whatIf);
    }

    private Path folder() {
        return catalog.orElseGet(() -> CatalogFolder.beside(brief));
    }

    /** The catalogue as asked, with some more lengths replaced. */
    Catalog reread(Asked asked, List<Replacement> more) {
        List<Replacement> all =
                new ArrayList<>(asked.whatIf().map(WhatIf::applied).orElse(List.of()));
        all.addAll(more);
        return CatalogReader.read(
                folder(),
                new Replacements(all),
                asked.whatIf().map(WhatIf::before).orElse(asked.catalog()));
    }

    private WhatIf whatIf(List<Path> files, Catalog plain) {
        Settled settled = Settled.of(CatalogReader.readReadings(files, plain));
        List<Replacement> all = new ArrayList<>(settled.used());
        try {
            all.addAll(Assumptions.replacements(assumptions, new Lengths(plain).with(settled.used())));
        } catch (NotUnderstood e) {
            throw new ParameterException(spec.commandLine(), String.valueOf(e.getMessage()), e);
        }
        Catalog changed = CatalogReader.read(folder(), new Replacements(all));
        return new WhatIf(plain, changed, all, settled.contradictions(), settled.notes());
    }

    /** What an answer comes from; what is overridden is told at once to people, and left to the answer for programs. */
    Origin origin(Asked asked, Halt halt) {
        List<WhatIfAnswer> answers = new ArrayList<>();
        if (asked.whatIf().isPresent() && format != Format.CSV) {
            for (Chassis each : asked.chassis()) {
                Progress progress = Progress.on(spec.commandLine().getErr(), "what flips in " + each.id());
                answers.add(WhatIfAnswer.of(asked.whatIf().get(), each.id(), asked.brief(), progress.around(halt)));
                progress.end();
            }
        }
        if (format == Format.TABLE) {
            answers.forEach(a -> WhatIfText.lines(a).forEach(spec.commandLine().getOut()::println));
        }
        return Origin.of(Version.program(), asked.catalog(), asked.brief()).with(answers);
    }

    /** Ids that an option of the command may name. */
    KnownId known(String what, List<String> ids) {
        return new KnownId(spec, what, ids);
    }

    /** Refuses what cannot be the key of a layout. */
    void requireKey(String key) {
        if (!key.matches("[2-9a-z]{5}-[2-9a-z]{5}")) {
            throw new ParameterException(spec.commandLine(), "a key reads like 4eiwb-4iu6c, not \"" + key + "\"");
        }
    }

    /** Refuses mods to be done that a chassis asked about lacks, and mods not to be done that every one lacks. */
    void requireMods(Asked asked, List<String> with, List<String> without) {
        KnownId anyMod = known(
                "mod",
                asked.chassis().stream()
                        .flatMap(c -> c.mods().stream().map(Mod::id))
                        .distinct()
                        .toList());
        without.forEach(anyMod::require);
        for (Chassis each : asked.chassis()) {
            KnownId mod = known(
                    "mod of " + each.id(), each.mods().stream().map(Mod::id).toList());
            with.forEach(mod::require);
        }
    }

    /** Refuses mounts that no chassis asked about has. */
    void requireMounts(Asked asked, List<String> mounts) {
        KnownId mount = known(
                "mount",
                asked.chassis().stream()
                        .flatMap(c -> c.mounts().stream().map(Mount::id))
                        .distinct()
                        .toList());
        mounts.forEach(mount::require);
    }

    /** Refuses a number out of range. */
    void requireWithin(String option, int number, int least, int most) {
        if (number < least || number > most) {
            throw new ParameterException(
                    spec.commandLine(),
                    option + " must be at least " + least + " and at most " + most + " but was " + number);
        }
    }

    /** Refuses a count below 1. */
    void requirePositive(String option, int count) {
        if (count < 1) {
            throw new ParameterException(spec.commandLine(), option + " must be at least 1 but was " + count);
        }
    }

    Format format() {
        return format;
    }

    /** When to stop, counted from now. */
    Stopper stopper() {
        return Stopper.start(seconds);
    }
}
