using System.Numerics;
using System.Runtime.CompilerServices;
using Condyle.Model;
using Condyle.Recipes;

namespace Condyle;

/// <content>Recipes: many sentences at once, each of which could be written out.</content>
public sealed partial class RigDraft
{
    /// <summary>
    /// Builds an arm or a leg of two bones: a copy <c>ik</c> that reaches for a goal and faces a pole, a copy <c>fk</c> that controls turn joint by joint, a switch that gives the limb
    /// from one to the other without a jump at rest, and labels that say which has it. Its page, <c>src/Condyle/Recipes/Limb.md</c>, shows the same written out.
    /// </summary>
    /// <param name="bones">The limb's joints: three, without twist joints.</param>
    /// <param name="name">What it is called in names, without its side: <c>arm</c>.</param>
    /// <param name="side">Its side.</param>
    /// <param name="under">What carries its root: the collar, the hips.</param>
    /// <param name="systems">The group that holds what animators don't see.</param>
    /// <param name="space">What its goal and its pole hang under: the world, so that a hand stays where it is when the body moves.</param>
    /// <param name="options">What else it has.</param>
    /// <returns>The limb's handles.</returns>
    /// <exception cref="ArgumentException">The name is empty, or the side is null.</exception>
    [Recipe]
    public Limb Limb(
        Chain bones, string name, Side side, Node under, Group systems, Node space, LimbOptions? options = null, [CallerFilePath] string file = "", [CallerLineNumber] int line = 0) =>
        Limb(bones, name, Given.ASide(side, "A limb"), under, systems, space, options, Place(file, line))!;

    internal Limb? Limb(Chain bones, Text name, Side? side, Node under, Group systems, Node space, LimbOptions? options, PlaceId place) =>
        side is null ? null : LimbRecipe.Build(this, bones, new RecipeNames(name, side, conventions), side, under, systems, space, options ?? new LimbOptions(), place);

    /// <summary>
    /// Lets the foot of a leg roll by one dial, in degrees: below zero about its heel, then about its ball, and beyond that about the tip of its toes. The leg then reaches for a group
    /// that hangs under the three instead of its goal; the toes get a control that stays on the ground while IK has the leg and goes with the foot while FK has.
    /// Its page, <c>src/Condyle/Recipes/FootRoll.md</c>, shows the same written out.
    /// </summary>
    /// <param name="leg">The leg, whose tip is the ankle.</param>
    /// <param name="toes">The joint that the toes turn at: the ball of the foot.</param>
    /// <param name="heel">Where the heel meets the ground, in metres from the ankle along the world's axes at rest.</param>
    /// <param name="tip">Where the toes end on the ground, in metres from the toes' joint along the world's axes at rest.</param>
    /// <param name="options">What it is called, and how far it rolls.</param>
    /// <returns>The foot's handles.</returns>
    [Recipe]
    public FootRoll FootRoll(
        Limb leg, Joint toes, Vector3 heel, Vector3 tip, FootRollOptions? options = null, [CallerFilePath] string file = "", [CallerLineNumber] int line = 0) =>
        FootRoll(leg ?? throw new ArgumentNullException(nameof(leg), "A foot was given null for its leg. Give it what Limb has built."), toes, heel, tip, options, Place(file, line))!;

    internal FootRoll? FootRoll(Limb? leg, Joint toes, Fact<Vector3> heel, Fact<Vector3> tip, FootRollOptions? options, PlaceId place) =>
        leg is null ? null : FootRollRecipe.Build(this, leg, toes, heel, tip, conventions, options ?? new FootRollOptions(), place);

    /// <summary>
    /// Lets the collar of an arm turn by a control, and follow the arm's goal by a share of the way while IK has the arm. The arm then hangs under that control.
    /// Its page, <c>src/Condyle/Recipes/Collar.md</c>, shows the same written out.
    /// </summary>
    /// <param name="arm">The arm, whose root is below the collar.</param>
    /// <param name="collar">The collar's joint.</param>
    /// <param name="under">What carries it: the chest's control.</param>
    /// <param name="options">What it is called, and how far it follows.</param>
    /// <returns>The collar's handles.</returns>
    [Recipe]
    public Collar Collar(Limb arm, Joint collar, Node under, CollarOptions? options = null, [CallerFilePath] string file = "", [CallerLineNumber] int line = 0) =>
        Collar(arm ?? throw new ArgumentNullException(nameof(arm), "A collar was given null for its arm. Give it what Limb has built."), collar, under, options, Place(file, line))!;

    internal Collar? Collar(Limb? arm, Joint collar, Node under, CollarOptions? options, PlaceId place) =>
        arm is null ? null : CollarRecipe.Build(this, arm, collar, under, conventions, options ?? new CollarOptions(), place);
}
