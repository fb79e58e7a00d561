using Condyle.Model;
using Condyle.Naming;
using Condyle.Rules;

namespace Condyle.Tests.Rules;

/// <summary>CDY1002: the advice fits what made the name twice.</summary>
public class NameTwiceTests
{
    [Fact]
    public void A_skeleton_that_is_taken_in_twice_is_to_be_handed_on() => Assert.EndsWith(
        "The rig takes in skeleton 'docker' twice: take it once, and hand on what that gives.",
        Message(rig =>
        {
            rig.Skeleton("docker").Root("pelvis");
            rig.Skeleton("docker").Root("pelvis");
        }),
        StringComparison.Ordinal);

    [Fact]
    public void A_joint_of_another_skeleton_gets_a_name_of_its_own() => Assert.EndsWith(
        "Give this one a name of its own.",
        Message(rig =>
        {
            rig.Skeleton("docker").Root("root");
            rig.Skeleton("winch").Root("root");
        }),
        StringComparison.Ordinal);

    private static string Message(Action<RigDraft> say)
    {
        var draft = new RigDraft(Conventions.Default, new ProgramPlaces());
        say(draft);
        return Assert.Single(RuleBook.Check(RigModel.Of(draft.Log), Conventions.Default), finding => finding.Rule.Id == "CDY1002").Message;
    }
}
