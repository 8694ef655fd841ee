package dev.tipwright.catalogue;

import com.sun.source.tree.ClassTree;
import com.sun.source.tree.CompilationUnitTree;
import com.sun.source.tree.ConditionalExpressionTree;
import com.sun.source.tree.ExpressionTree;
import com.sun.source.tree.IdentifierTree;
import com.sun.source.tree.ImportTree;
import com.sun.source.tree.MemberSelectTree;
import com.sun.source.tree.MethodInvocationTree;
import com.sun.source.tree.MethodTree;
import com.sun.source.tree.NewClassTree;
import com.sun.source.tree.ReturnTree;
import com.sun.source.tree.Tree;
import com.sun.source.tree.VariableTree;
import com.sun.source.util.TreePathScanner;
import com.sun.source.util.TreeScanner;
import dev.tipwright.core.evidence.FindingCode;
import dev.tipwright.core.evidence.Severity;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.BiConsumer;

/**
 * Every finding code of the three modules, with its comment, and with the severities that the code gives it: the arguments of
 * {@code Finding.note}, {@code caution} and {@code stop} are followed back to the constants they can be.
 */
final class FoundCodes {

    /**
     * A code.
     *
     * @param owner the enum, by its full name
     * @param name the constant
     * @param meaning its comment
     * @param template what it says
     * @param severities that it is given somewhere, least first
     */
    record Code(String owner, String name, String meaning, String template, Set<Severity> severities) {}

    private final Sources sources;
    private final Map<String, Class<?>> enums = new TreeMap<>();
    private final Map<String, String> comments = new TreeMap<>();
    private final Map<String, Set<Severity>> severities = new TreeMap<>();

    FoundCodes(Sources sources) {
        this.sources = sources;
        sources.units().forEach(this::readEnums);
        sources.units().forEach(this::readCalls);
    }

    /** In the order of modules, packages and constants. */
    List<Code> codes() {
        List<Code> codes = new ArrayList<>();
        enums.forEach((owner, type) -> {
            for (Object constant : type.getEnumConstants()) {
                FindingCode code = (FindingCode) constant;
                String key = owner + "." + code.name();
                codes.add(new Code(
                        owner,
                        code.name(),
                        comments.getOrDefault(key, ""),
                        code.template(),
                        severities.getOrDefault(key, Set.of())));
            }
        });
        return codes;
    }

    private void readEnums(CompilationUnitTree unit) {
        new TreePathScanner<Void, Void>() {
            @Override
            public Void visitVariable(VariableTree variable, Void nothing) {
                ClassTree owner = getCurrentPath().getParentPath().getLeaf() instanceof ClassTree type ? type : null;
                boolean constant = owner != null
                        && owner.getKind() == Tree.Kind.ENUM
                        && owner.getImplementsClause().stream()
                                .anyMatch(of -> of.toString().equals("FindingCode"));
                if (constant && variable.getInitializer() instanceof NewClassTree) {
                    String name = unit.getPackageName() + "." + owner.getSimpleName();
                    enums.computeIfAbsent(name, FoundCodes::load);
                    String comment = sources.trees().getDocComment(getCurrentPath());
                    comments.put(
                            name + "." + variable.getName(),
                            comment == null ? "" : comment.strip().replaceAll("\\s+", " "));
                }
                return super.visitVariable(variable, null);
            }
        }.scan(unit, null);
    }

    private static Class<?> load(String name) {
        try {
            return Class.forName(name);
        } catch (ClassNotFoundException e) {
            throw new IllegalStateException(e);
        }
    }

    private void readCalls(CompilationUnitTree unit) {
        new TreeScanner<Void, Void>() {
            @Override
            public Void visitMethodInvocation(MethodInvocationTree call, Void nothing) {
                String method = call.getMethodSelect().toString();
                if (method.matches("Finding\\.(note|caution|stop)")) {
                    Severity severity = Severity.valueOf(method.substring(8).toUpperCase(Locale.ROOT));
                    note(unit, call.getArguments().get(0), EnumSet.of(severity));
                }
                return super.visitMethodInvocation(call, null);
            }

            @Override
            public Void visitNewClass(NewClassTree made, Void nothing) {
                boolean own = unit.getPackageName().toString().endsWith(".evidence");
                if (made.getIdentifier().toString().equals("Finding") && !own) {
                    made(unit, made.getArguments().get(0), made.getArguments().get(1));
                }
                return super.visitNewClass(made, null);
            }
        }.scan(unit, null);
    }

    /** Code and severity of a finding made by its constructor; where both are chosen, by the same question in the same order. */
    private void made(CompilationUnitTree unit, ExpressionTree code, ExpressionTree severity) {
        Optional<ConditionalExpressionTree> codes = choice(unit, code);
        Optional<ConditionalExpressionTree> severities = choice(unit, severity);
        if (codes.isPresent() && severities.isPresent()) {
            made(unit, codes.get().getTrueExpression(), severities.get().getTrueExpression());
            made(unit, codes.get().getFalseExpression(), severities.get().getFalseExpression());
            return;
        }
        Set<Severity> given = EnumSet.noneOf(Severity.class);
        follow(unit, severity, (type, name) -> {
            if (type.equals("Severity")) {
                given.add(Severity.valueOf(name));
            }
        });
        note(unit, code, given);
    }

    /** A choice, or a call of a method of the file that is nothing but one. */
    private static Optional<ConditionalExpressionTree> choice(CompilationUnitTree unit, ExpressionTree expression) {
        if (expression instanceof ConditionalExpressionTree choice) {
            return Optional.of(choice);
        }
        if (expression instanceof MethodInvocationTree call && call.getMethodSelect() instanceof IdentifierTree own) {
            List<MethodTree> methods = methods(unit, own.getName().toString());
            boolean plain = methods.size() == 1
                    && methods.get(0).getBody().getStatements().size() == 1;
            if (plain && methods.get(0).getBody().getStatements().get(0) instanceof ReturnTree only) {
                return only.getExpression() instanceof ConditionalExpressionTree choice
                        ? Optional.of(choice)
                        : Optional.empty();
            }
        }
        return Optional.empty();
    }

    private static List<MethodTree> methods(CompilationUnitTree unit, String name) {
        List<MethodTree> methods = new ArrayList<>();
        new TreeScanner<Void, Void>() {
            @Override
            public Void visitMethod(MethodTree method, Void inside) {
                if (method.getName().contentEquals(name) && method.getBody() != null) {
                    methods.add(method);
                }
                return super.visitMethod(method, null);
            }
        }.scan(unit, null);
        return methods;
    }

    private void note(CompilationUnitTree unit, Tree code, Set<Severity> given) {
        follow(unit, code, (type, name) -> {
            String owner = resolve(unit, type);
            if (enums.containsKey(owner)) {
                severities
                        .computeIfAbsent(owner + "." + name, key -> EnumSet.noneOf(Severity.class))
                        .addAll(given);
            }
        });
    }

    /** The full name of a type, by the imports or the package of the file it is named in. */
    private static String resolve(CompilationUnitTree unit, String type) {
        for (ImportTree each : unit.getImports()) {
            String name = each.getQualifiedIdentifier().toString();
            if (name.endsWith("." + type)) {
                return name;
            }
        }
        return unit.getPackageName() + "." + type;
    }

    /** Tells every {@code Type.CONSTANT} that an expression can be, through variables, parameters and methods of the same file. */
    private static void follow(CompilationUnitTree unit, Tree expression, BiConsumer<String, String> found) {
        new Following(unit, found).scan(expression, null);
    }

    private static final class Following extends TreeScanner<Void, Void> {
        private final CompilationUnitTree unit;
        private final BiConsumer<String, String> found;
        private final Set<String> been = new HashSet<>();

        Following(CompilationUnitTree unit, BiConsumer<String, String> found) {
            this.unit = unit;
            this.found = found;
        }

        @Override
        public Void visitMemberSelect(MemberSelectTree select, Void nothing) {
            String constant = select.getIdentifier().toString();
            if (constant.matches("[A-Z][A-Z_0-9]*")) {
                found.accept(select.getExpression().toString(), constant);
            }
            return null;
        }

        /** A call of a method of this file: what it can return. Its arguments are followed where it uses them. */
        @Override
        public Void visitMethodInvocation(MethodInvocationTree call, Void nothing) {
            if (call.getMethodSelect() instanceof IdentifierTree own && been.add("method " + own.getName())) {
                methods(unit, own.getName().toString()).forEach(method -> scan(method.getBody(), null));
            }
            return null;
        }

        @Override
        public Void visitIdentifier(IdentifierTree identifier, Void nothing) {
            String name = identifier.getName().toString();
            if (been.add("variable " + name)) {
                new TreeScanner<Void, Void>() {
                    @Override
                    public Void visitMethod(MethodTree method, Void inside) {
                        for (int k = 0; k < method.getParameters().size(); k++) {
                            if (method.getParameters().get(k).getName().contentEquals(name)) {
                                arguments(method.getName().toString(), k)
                                        .forEach(each -> Following.this.scan(each, null));
                            }
                        }
                        return super.visitMethod(method, null);
                    }

                    @Override
                    public Void visitVariable(VariableTree variable, Void inside) {
                        if (variable.getName().contentEquals(name)) {
                            Following.this.scan(variable.getInitializer(), null);
                        }
                        return super.visitVariable(variable, null);
                    }
                }.scan(unit, null);
            }
            return null;
        }

        private List<ExpressionTree> arguments(String method, int at) {
            List<ExpressionTree> arguments = new ArrayList<>();
            new TreeScanner<Void, Void>() {
                @Override
                public Void visitMethodInvocation(MethodInvocationTree call, Void inside) {
                    String called = call.getMethodSelect().toString();
                    if ((called.equals(method) || called.endsWith("." + method))
                            && call.getArguments().size() > at) {
                        arguments.add(call.getArguments().get(at));
                    }
                    return super.visitMethodInvocation(call, null);
                }
            }.scan(unit, null);
            return arguments;
        }
    }
}
