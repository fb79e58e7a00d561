using System.Numerics;
using Condyle.Runtime.Tests.Evaluation;
using Condyle.Tests.Shared;

namespace Condyle.Runtime.Tests.Recipes;

/// <summary>A biped that a test poses by moves and turns along the world's axes, as they are at rest.</summary>
internal sealed class Posed
{
    private readonly RigInstance instance;
    private readonly Biped biped;

    public Posed(int seed, BipedRecipes? recipes = null, bool behaves = false)
    {
        biped = new Biped(seed, recipes, behaves);
        instance = DefinedRig.Compile(biped.Define).NewInstance();
    }

    public IEnumerable<string> Joints => biped.Rest.Keys;

    public Vector3 RestOf(string joint) => biped.Rest[joint].At;

    public Vector3 At(string joint) => World(joint).Translation;

    /// <summary>How far a joint has turned from rest, along the world's axes.</summary>
    public Quaternion TurnOf(string joint) =>
        Quaternion.Normalize(Quaternion.CreateFromRotationMatrix(World(joint)) * Quaternion.Inverse(biped.Rest[joint].Turned));

    /// <summary>Where a place ends up that goes with a joint, given where it is at rest.</summary>
    public Vector3 Carried(string joint, Vector3 atRest) => At(joint) + Vector3.Transform(atRest - RestOf(joint), TurnOf(joint));

    public void Dial(string name, float value)
    {
        var dials = instance.Rig.Dials.Where(dial => dial.Name == name || dial.Name.EndsWith($".{name}", StringComparison.Ordinal)).ToList();
        Assert.NotEmpty(dials);
        foreach (var dial in dials)
            instance.SetDial(dial.Index, value);
    }

    public void Switch(string name, float value)
    {
        var switches = instance.Rig.Switches.Where(sw => sw.Name == name || sw.Name.EndsWith($".{name}", StringComparison.Ordinal)).ToList();
        Assert.NotEmpty(switches);
        foreach (var sw in switches)
            instance.SetSwitch(sw.Index, value);
    }

    /// <summary>Picks an option of the choice <c>space</c> of a control, or of each side's.</summary>
    public void Ride(string control, string option)
    {
        var choices = instance.Rig.Choices.Where(choice => new[] { $"{control}.space", $"{control}_left.space", $"{control}_right.space" }.Contains(choice.Name)).ToList();
        Assert.NotEmpty(choices);
        foreach (var choice in choices)
            instance.SetChoice(choice.Index, choice.Options.ToList().IndexOf(option));
    }

    /// <param name="control">A control.</param>
    /// <param name="joint">The joint that it stands at; none where it stands along the world's axes.</param>
    /// <param name="metres">How far.</param>
    public void Move(string control, string? joint, Vector3 metres) =>
        instance.SetMove(instance.Rig.ControlIndex(control), Vector3.Transform(metres, Quaternion.Inverse(Frame(joint))));

    /// <inheritdoc cref="Move"/>
    public void Turn(string control, string? joint, Quaternion turn) =>
        instance.SetTurn(instance.Rig.ControlIndex(control), Quaternion.Normalize(Quaternion.Inverse(Frame(joint)) * turn * Frame(joint)));

    /// <summary>Moves and turns the left control, and the right one as its mirror image.</summary>
    public void Both(string control, string? joint, Vector3 metres, Quaternion turn)
    {
        foreach (var side in new[] { "left", "right" })
        {
            var of = joint is null ? null : $"{joint}_{side}";
            if (metres != Vector3.Zero)
                Move($"{control}_{side}", of, side == "left" ? metres : MirroredRest.Of(metres));
            if (turn != Quaternion.Identity)
                Turn($"{control}_{side}", of, side == "left" ? turn : MirroredRest.Facing(turn));
        }
    }

    public Posed Evaluated()
    {
        instance.Evaluate();
        return this;
    }

    public void AssertMirrored()
    {
        foreach (var left in Joints.Where(name => name.EndsWith("_left", StringComparison.Ordinal)))
        {
            var right = left.Replace("_left", "_right", StringComparison.Ordinal);
            Same(MirroredRest.Of(At(left)), At(right), $"{left} mirrored");
            Same(MirroredRest.Facing(TurnOf(left)), TurnOf(right), $"{left} mirrored");
        }
    }

    public static void Same(Vector3 expected, Vector3 actual, string what) => Assert.True(Vector3.Distance(expected, actual) < 2e-5f, $"{what}: {actual}, not {expected}");

    public static void Same(Quaternion expected, Quaternion actual, string what) =>
        Assert.True(MathF.Abs(Quaternion.Dot(expected, actual)) > 1 - 1e-6f, $"{what}: {actual}, not {expected}");

    private Quaternion Frame(string? joint) => joint is null ? Quaternion.Identity : biped.Rest[joint].Turned;

    private Matrix4x4 World(string joint) => instance.JointWorld(instance.Rig.JointIndex(joint));
}
