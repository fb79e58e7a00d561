using Condyle.Model;
using Condyle.Naming;
using Condyle.Rules;

namespace Condyle.Tests.Rules;

/// <summary>A rig that is said in a test, and what the rules find in it.</summary>
internal static class Checked
{
    // What is said here is half a rig. The other rules have their cases in the corpus.
    private static readonly HashSet<string> Rules = ["CDY1001", "CDY2001", "CDY3001"];

    public static IReadOnlyList<Finding> Findings(Action<RigDraft> say, Conventions? conventions = null)
    {
        var draft = new RigDraft(conventions ?? Conventions.Default, new ProgramPlaces());
        say(draft);
        return [.. RuleBook.Check(RigModel.Of(draft.Log), conventions ?? Conventions.Default).Where(finding => Rules.Contains(finding.Rule.Id))];
    }

    public static Finding Only(Action<RigDraft> say, Conventions? conventions = null) => Assert.Single(Findings(say, conventions));

    public static void IsClean(Action<RigDraft> say) => Assert.Empty(Findings(say));

    /// <summary>An arm of three joints with two copies, a control and a switch on it.</summary>
    public static (Chain Chain, Copy Ik, Copy Fk, Control Hand, Switch Amount) Arm(RigDraft rig, string switchName = "fk")
    {
        var shoulder = rig.Skeleton("docker").Root("shoulder_left");
        var wrist = shoulder.Child("elbow_left").Child("wrist_left");
        var chain = rig.Chain(shoulder, wrist);
        var hand = rig.Control("hand_left");
        return (chain, chain.Copy("ik"), chain.Copy("fk"), hand, hand.Switch(switchName));
    }

    public static Weight OpenWeight => new(null, Fact<WeightPolynomial>.Open);
}
