package loopwright;

import static com.tngtech.archunit.core.domain.JavaAccess.Predicates.target;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.type;
import static com.tngtech.archunit.core.domain.properties.HasName.Predicates.name;
import static com.tngtech.archunit.core.domain.properties.HasOwner.Predicates.With.owner;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.fields;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noFields;
import static com.tngtech.archunit.library.GeneralCodingRules.ACCESS_STANDARD_STREAMS;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static java.util.Map.entry;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaAccess;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.domain.JavaField;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;

/**
 * The rooms of the design and the doors between them, as rules on the compiled classes.
 *
 * <p>A rule that finds nothing to look at fails; only a room that is not built yet is let off.
 */
@AnalyzeClasses(packages = "loopwright", importOptions = ImportOption.DoNotIncludeTests.class)
final class ArchitectureTest {

    /** What each room may use besides itself: every room on a lower line of the design's list. */
    private static final Map<String, List<String>> MAY_USE = Map.ofEntries(
            entry("quantity", List.of()),
            entry("catalog", List.of("quantity")),
            entry("geometry", List.of("catalog", "quantity")),
            entry("loop", List.of("geometry", "catalog", "quantity")),
            entry("power", List.of("geometry", "catalog", "quantity")),
            entry("tolerance", List.of("loop", "power", "geometry", "catalog", "quantity")),
            entry("fit", List.of("tolerance", "loop", "power", "geometry", "catalog", "quantity")),
            entry("plumbing", List.of("fit", "tolerance", "loop", "power", "geometry", "catalog", "quantity")),
            entry("rank", List.of("plumbing", "fit", "tolerance", "loop", "power", "geometry", "catalog", "quantity")),
            entry("answer", below("rank", "plumbing")),
            entry("workshop", below("answer", "rank", "plumbing")),
            entry("paper", below("workshop", "answer", "rank", "plumbing")),
            entry("look", below("paper", "workshop", "answer", "rank", "plumbing")),
            entry("survey", below("paper", "workshop", "answer", "rank", "plumbing")),
            entry("cli", below("look", "survey", "paper", "workshop", "answer", "rank", "plumbing")));

    /** Third parties, and the only rooms that may know them; the YAML engine comes with Jackson and has one room. */
    private static final Map<String, List<String>> THIRD_PARTIES = Map.of(
            "tools.jackson..", List.of("catalog", "paper"),
            "org.apache.pdfbox..", List.of("paper"),
            "com.fasterxml.jackson.annotation..", List.of("catalog", "paper"),
            "org.snakeyaml.engine..", List.of("catalog"),
            // The loop's order is a circuit with costs; in the workshop only its schedule: what the one pair of hands
            // does next.
            "org.chocosolver..", List.of("fit", "plumbing", "workshop"),
            "picocli..", List.of("cli"),
            "org.hipparchus..", List.of("loop", "tolerance"));

    /** Classes whose state is what they are for: the solver's own, and a root finder's when there is one. */
    private static final Set<String> MAY_CHANGE = Set.of(
            "loopwright.fit.Positions",
            "loopwright.fit.Stop",
            "loopwright.loop.BracketedRoot",
            "loopwright.plumbing.route.Heap",
            // What one run of the program has shown so far.
            "loopwright.cli.Outcome",
            "loopwright.cli.Progress");

    /** Holds the process back on Ctrl-C until the answer so far is out, then ends it: state of the process itself. */
    private static final String STOPPER = "loopwright.cli.Stopper";

    private static final String BAD_NAME = ".*(Util|Utils|Helper|Manager|Impl|Base|Data|Info)";

    private ArchitectureTest() {}

    private static List<String> below(String... upper) {
        List<String> out = new ArrayList<>(List.of(upper));
        out.addAll(List.of("fit", "tolerance", "loop", "power", "geometry", "catalog", "quantity"));
        return List.copyOf(out);
    }

    private static String room(String name) {
        return "loopwright." + name + "..";
    }

    private static boolean isBuilt(String room, JavaClasses classes) {
        return classes.stream().anyMatch(c -> (c.getPackageName() + ".").startsWith("loopwright." + room + "."));
    }

    @ArchTest
    static void arrowsPointDown(JavaClasses classes) {
        new TreeMap<>(MAY_USE).forEach((name, lower) -> {
            List<String> allowed = new ArrayList<>(List.of("java..", "org.jspecify..", room(name)));
            lower.forEach(l -> allowed.add(room(l)));
            THIRD_PARTIES.forEach((library, rooms) -> {
                if (rooms.contains(name)) {
                    allowed.add(library);
                }
            });
            classes()
                    .that()
                    .resideInAPackage(room(name))
                    .should()
                    .onlyDependOnClassesThat(
                            isPrimitive().or(JavaClass.Predicates.resideInAnyPackage(allowed.toArray(String[]::new))))
                    .allowEmptyShould(!isBuilt(name, classes))
                    .check(classes);
        });
    }

    private static DescribedPredicate<JavaClass> isPrimitive() {
        return DescribedPredicate.describe(
                "primitives", c -> c.getBaseComponentType().isPrimitive());
    }

    @ArchTest
    static void everyClassIsInARoom(JavaClasses classes) {
        classes()
                .should()
                .resideInAnyPackage(
                        MAY_USE.keySet().stream().map(ArchitectureTest::room).toArray(String[]::new))
                .check(classes);
    }

    @ArchTest
    static final ArchRule ROOMS_MAKE_NO_CIRCLE =
            slices().matching("loopwright.(*)..").should().beFreeOfCycles();

    @ArchTest
    static void thirdPartiesStayInTheirRoom(JavaClasses classes) {
        new TreeMap<>(THIRD_PARTIES)
                .forEach((library, rooms) -> noClasses()
                        .that()
                        .resideOutsideOfPackages(
                                rooms.stream().map(ArchitectureTest::room).toArray(String[]::new))
                        .should()
                        .dependOnClassesThat()
                        .resideInAPackage(library)
                        .check(classes));
    }

    @ArchTest
    static final ArchRule NAMES_SAY_SOMETHING =
            noClasses().should().haveNameMatching(BAD_NAME).because("a name that fits everything says nothing");

    @ArchTest
    static final ArchRule RECORDS_HOLD_NO_ARRAYS = noFields()
            .that()
            .areDeclaredInClassesThat(DescribedPredicate.describe("are records", JavaClass::isRecord))
            .and()
            .areNotStatic()
            .should()
            .haveRawType(DescribedPredicate.describe("an array", JavaClass::isArray));

    @ArchTest
    static final ArchRule NO_CLOCK = noClasses()
            .should()
            .accessTargetWhere(
                    target(name("now")).and(target(owner(JavaClass.Predicates.resideInAPackage("java.time..")))))
            .orShould()
            .accessTargetWhere(call(System.class, "currentTimeMillis"))
            .because("the same input gives the same output");

    @ArchTest
    static final ArchRule NO_LOCALE_OF_THE_MACHINE =
            noClasses().should().accessTargetWhere(call(Locale.class, "getDefault"));

    @ArchTest
    static final ArchRule STANDARD_STREAMS_ONLY_IN_CLI =
            noClasses().that().resideOutsideOfPackage(room("cli")).should(ACCESS_STANDARD_STREAMS);

    @ArchTest
    static final ArchRule ONLY_MAIN_EXITS = noClasses()
            .that()
            .doNotHaveFullyQualifiedName("loopwright.cli.Main")
            .and()
            .doNotHaveFullyQualifiedName(STOPPER)
            .should()
            .accessTargetWhere(call(System.class, "exit"))
            .orShould()
            .accessTargetWhere(call(Runtime.class, "exit"))
            .orShould()
            .accessTargetWhere(call(Runtime.class, "halt"));

    @ArchTest
    static final ArchRule INSTANCE_FIELDS_ARE_FINAL = fields().that()
            .areNotStatic()
            .and()
            .areDeclaredInClassesThat(DescribedPredicate.describe(
                    "are not among those that may change", c -> !MAY_CHANGE.contains(outermost(c))))
            .and(DescribedPredicate.describe("are not set by the command line's library", f -> !isOption(f)))
            .should()
            .beFinal();

    @ArchTest
    static final ArchRule STATICS_HOLD_NO_STATE =
            fields().that().areStatic().and().areNotDeclaredIn(STOPPER).should().beFinal();

    /** An option, a parameter, a mixin or a spec: the library writes it after the command is made. */
    private static boolean isOption(JavaField field) {
        return field.getAnnotations().stream()
                .anyMatch(a -> a.getRawType().getName().startsWith("picocli.CommandLine$"));
    }

    private static String outermost(JavaClass declaring) {
        int inner = declaring.getName().indexOf('$');
        return inner < 0 ? declaring.getName() : declaring.getName().substring(0, inner);
    }

    /** A call or a method reference. */
    private static DescribedPredicate<JavaAccess<?>> call(Class<?> owner, String method) {
        return target(name(method)).and(target(owner(type(owner)))).as("%s.%s", owner.getSimpleName(), method);
    }
}
