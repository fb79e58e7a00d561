using System.Reflection;
using System.Runtime.CompilerServices;
using Condyle.Model;
using Condyle.Naming;
using Condyle.Tests.Evaluation;

namespace Condyle.Tests.Authoring;

/// <summary>What lets a reading stand in for every member of Condyle without knowing one of them.</summary>
public class ApiShapeTests
{
    private static readonly Type[] Handles = [.. typeof(RigDraft).Assembly.GetExportedTypes().Where(type => typeof(IHandle).IsAssignableFrom(type)), typeof(RigDraft)];

    public static TheoryData<Type> PublicTypes => [.. typeof(RigDraft).Assembly.GetExportedTypes()];

    public static TheoryData<Type> OptionTypes => [.. typeof(RigDraft).Assembly.GetExportedTypes().Where(type => type.Name.EndsWith("Options", StringComparison.Ordinal))];

    public static TheoryData<string> Sentences => [.. SentencesOf().Select(Print)];

    [Theory]
    [MemberData(nameof(PublicTypes))]
    public void A_public_type_is_sealed_and_its_methods_are_neither_generic_nor_take_functions(Type type)
    {
        Assert.True(type.IsSealed || type.IsInterface || type.IsEnum, $"{type} can be derived from.");
        foreach (var method in type.GetMethods(BindingFlags.Public | BindingFlags.Instance | BindingFlags.Static | BindingFlags.DeclaredOnly))
        {
            Assert.False(method.IsGenericMethod, $"{method} is generic.");
            Assert.DoesNotContain(method.GetParameters(), parameter => typeof(Delegate).IsAssignableFrom(parameter.ParameterType));
        }
    }

    [Theory]
    [MemberData(nameof(Sentences))]
    public void A_sentence_is_one_line_over_a_twin_that_takes_facts_and_a_place(string sentence)
    {
        var method = SentencesOf().Single(candidate => Print(candidate) == sentence);
        var plain = Plain(method);
        var twin = method.DeclaringType!.GetMethods(BindingFlags.NonPublic | BindingFlags.Instance | BindingFlags.DeclaredOnly).FirstOrDefault(candidate =>
            candidate.Name == method.Name
            && candidate.GetParameters() is var parameters
            && parameters.Length == plain.Length + 1
            && parameters[^1].ParameterType == typeof(PlaceId)
            && plain.Zip(parameters).All(pair => pair.Second.ParameterType == FactOf(pair.First.ParameterType)));

        Assert.True(twin is not null, $"{sentence} has no twin.");
        // A recipe's twin answers nothing where it would have to guess.
        Assert.Equal(method.ReturnType, Nullable.GetUnderlyingType(twin.ReturnType) ?? twin.ReturnType);
    }

    [Theory]
    [MemberData(nameof(Sentences))]
    public void A_sentence_with_one_argument_can_stand_as_a_method_group(string sentence)
    {
        var method = SentencesOf().Single(candidate => Print(candidate) == sentence);
        var required = Plain(method).Where(parameter => !parameter.HasDefaultValue).ToArray();
        if (required.Length != 1 || method.Name == "Child" || method.Name == "Root")
            return;

        var group = method.DeclaringType!.GetMethod(method.Name, [required[0].ParameterType]);

        Assert.True(group is not null, $"{sentence} has no overload without caller information.");
        Assert.Equal(1, method.GetCustomAttributesData().Count(attribute => attribute.AttributeType.Name == "OverloadResolutionPriorityAttribute"));
    }

    [Fact]
    public void A_method_group_binds_to_the_overload_without_caller_information()
    {
        var rig = Rig.Examine(new FromNames());

        Assert.Equal(["a", "b", "c"], rig.Model.Nodes.Select(node => node.Name.ToString()));
        Assert.NotNull(rig.Places.Find(rig.Model.Nodes[2].Place));
    }

    [Fact]
    public void A_draft_that_is_built_takes_no_more_sentences()
    {
        var definition = new Keeper();
        Rig.Build(definition);

        Assert.Contains("built already", Assert.Throws<InvalidOperationException>(() => definition.Kept!.Control("late")).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_handle_that_no_draft_gave_out_says_so() =>
        Assert.Contains("never made", Assert.Throws<InvalidOperationException>(() => default(Control).Lock(Channels.Move)).Message, StringComparison.Ordinal);

    [Fact]
    public void A_handle_that_no_draft_gave_out_does_not_stand_for_what_was_said_first()
    {
        Says("node", rig => rig.Control("hand").Under(default(Node)));
        Says("control", rig => rig.Space(default(Control)));
        Says("joint", rig => rig.Chain(default, default));

        static void Says(string what, Action<RigDraft> define) =>
            Assert.Contains($"This {what} was never made", Assert.ThrowsAny<Exception>(() => TestRig.ModelOf(define)).ToString(), StringComparison.Ordinal);
    }

    [Theory]
    [MemberData(nameof(OptionTypes))]
    public void Options_of_which_nothing_is_known_leave_each_of_them_open(Type options)
    {
        var open = options.GetMethod("Open", BindingFlags.Static | BindingFlags.NonPublic)!.Invoke(null, [new RigDraft(Conventions.Default, new ProgramPlaces())]);
        Assert.All(options.GetProperties(), option => Assert.Equal(Text.Hole, options.GetProperty(option.Name + "Fact", BindingFlags.Instance | BindingFlags.NonPublic)!.GetValue(open)!.ToString()));
    }

    [Fact]
    public void A_recipe_says_what_it_was_given_null_for()
    {
        var rig = new RigDraft(Conventions.Default, new ProgramPlaces());
        var (joint, group, control) = (rig.Skeleton("gull").Root("wing"), rig.Group("systems_group"), rig.Control("root"));
        Says("limb", () => rig.Limb(rig.Chain(joint, joint), "arm", null!, control, group, control));
        Says("tail", () => rig.Tail(rig.Chain(joint, joint), "wing", null!, control));
        Says("hand", () => rig.Fingers(joint, [], "fingers", null!, control, group));
        Says("joints of its fingers", () => rig.Fingers(joint, null!, "fingers", Side.Left, control, group));
        Says("joints of its fingers", () => rig.Fingers(joint, [null!], "fingers", Side.Left, control, group));
        Says("foot", () => rig.FootRoll(null!, joint, default, default));
        Says("collar", () => rig.Collar(null!, joint, control));
        Says("their limb", () => rig.Spaces((Limb)null!, new BodySpaces { World = control }));
        Says("their head", () => rig.Spaces((Head)null!, new BodySpaces { World = control }));
        Says("what there is to ride", () => rig.Spaces(control, null!));

        static void Says(string what, Func<object> build) => Assert.Contains(what, Assert.Throws<ArgumentNullException>(build).Message, StringComparison.Ordinal);
    }

    private static IEnumerable<MethodInfo> SentencesOf() => Handles
        .SelectMany(type => type.GetMethods(BindingFlags.Public | BindingFlags.Instance | BindingFlags.DeclaredOnly))
        .Where(method => method.GetParameters().Any(parameter => parameter.GetCustomAttribute<CallerLineNumberAttribute>() is not null));

    private static ParameterInfo[] Plain(MethodInfo method) =>
        [.. method.GetParameters().TakeWhile(parameter => parameter.GetCustomAttribute<CallerFilePathAttribute>() is null)];

    private static Type FactOf(Type plain) =>
        plain == typeof(string) ? typeof(Text)
        : plain == typeof(string[]) ? typeof(Fact<Text[]>)
        : plain.Assembly == typeof(RigDraft).Assembly && !plain.IsEnum ? plain
        : typeof(Fact<>).MakeGenericType(plain);

    private static string Print(MethodInfo method) => $"{method.DeclaringType!.Name}.{method.Name}({string.Join(", ", Plain(method).Select(parameter => parameter.ParameterType.Name))})";

    private sealed class FromNames : IRigDefinition
    {
        public void Define(RigDraft rig)
        {
            var controls = new[] { "a", "b" }.Select(rig.Control).ToList();
            rig.Control("c").Under(controls[0]);
        }
    }

    private sealed class Keeper : IRigDefinition
    {
        public RigDraft? Kept { get; private set; }

        public void Define(RigDraft rig) => Kept = rig;
    }
}
