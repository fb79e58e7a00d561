using System.Runtime.CompilerServices;
using Condyle.Model;
using Condyle.Recipes;

namespace Condyle;

/// <content>Recipes of what isn't a limb: hands, spine, head, eyes, tails and wings.</content>
public sealed partial class RigDraft
{
    /// <summary>
    /// Builds the fingers of a hand: a control that turns each joint, and dials on the hand's control that curl and spread them, through groups in front of the controls.
    /// Its page, <c>src/Condyle/Recipes/Fingers.md</c>, shows the same written out.
    /// </summary>
    /// <param name="wrist">The joint that carries the fingers, whichever way the arm is posed.</param>
    /// <param name="fingers">The joints of each finger, from the thumb to the little finger.</param>
    /// <param name="name">What they are called in names, without their side, and the layer of their controls: <c>fingers</c>.</param>
    /// <param name="side">Their side.</param>
    /// <param name="hand">The control that has the dials.</param>
    /// <param name="systems">The group that holds what animators don't see.</param>
    /// <param name="options">How they curl and spread.</param>
    /// <returns>The fingers' handles.</returns>
    [Recipe]
    public Fingers Fingers(
        Joint wrist, JointSet[] fingers, string name, Side side, Control hand, Group systems, FingersOptions? options = null, [CallerFilePath] string file = "", [CallerLineNumber] int line = 0) =>
        Fingers(wrist, fingers?.Contains(null!) == false ? fingers : throw new ArgumentNullException(nameof(fingers), "A hand was given null for the joints of its fingers. Give it a set of joints for each finger."), name, Given.ASide(side, "A hand"), hand, systems, options, Place(file, line))!;

    internal Fingers? Fingers(Joint wrist, JointSet?[]? fingers, Text name, Side? side, Control hand, Group systems, FingersOptions? options, PlaceId place) =>
        side is null ? null : FingersRecipe.Build(this, wrist, fingers, new RecipeNames(name, side, conventions), side, hand, systems, options ?? new FingersOptions(), conventions, place);

    /// <summary>
    /// Builds a spine, from the pelvis up to the chest or the neck: a control <c>body</c> that moves all of it, <c>hips</c> that sway below a still chest, and controls that turn it joint by joint;
    /// or, where it curves, controls at its middle and its top that lay it along a curve. Its page, <c>src/Condyle/Recipes/Spine.md</c>, shows the same written out.
    /// </summary>
    /// <param name="bones">The spine's joints from the pelvis on: two or more.</param>
    /// <param name="name">What it is called in names: <c>spine</c>.</param>
    /// <param name="systems">The group that holds what animators don't see.</param>
    /// <param name="space">What the body's control hangs under: the world.</param>
    /// <param name="options">What else it has.</param>
    /// <returns>The spine's handles.</returns>
    /// <exception cref="ArgumentException">The chain has one joint only.</exception>
    [Recipe]
    public Spine Spine(
        Chain bones, string name, Group systems, Node space, SpineOptions? options = null, [CallerFilePath] string file = "", [CallerLineNumber] int line = 0) =>
        Spine(bones, name, systems, space, options, Place(file, line))!;

    internal Spine? Spine(Chain bones, Text name, Group systems, Node space, SpineOptions? options, PlaceId place) =>
        SpineRecipe.Build(this, bones, RecipeNames.Unsided(name, conventions), systems, space, options ?? new SpineOptions(), place);

    /// <summary>
    /// Builds a head that turns by its own control or looks at another one, as a switch has it. Its page, <c>src/Condyle/Recipes/Head.md</c>, shows the same written out.
    /// </summary>
    /// <param name="head">The head's joint.</param>
    /// <param name="under">The control that carries it: the neck's.</param>
    /// <param name="space">What the control that it looks at hangs under: the world.</param>
    /// <param name="options">What it is called, and how far it looks.</param>
    /// <returns>The head's handles.</returns>
    [Recipe]
    public Head Head(Joint head, Node under, Node space, HeadOptions? options = null, [CallerFilePath] string file = "", [CallerLineNumber] int line = 0) =>
        Head(head, under, space, options, Place(file, line))!;

    internal Head Head(Joint head, Node under, Node space, HeadOptions? options, PlaceId place) =>
        HeadRecipe.Build(this, head, RecipeNames.Unsided(NameOf(head.IdIn(this)), conventions), under, space, options ?? new HeadOptions(), place);

    /// <summary>
    /// Builds a pair of eyes that look at a control, with a control for each eye under it. Its page, <c>src/Condyle/Recipes/Head.md</c>, shows the same written out.
    /// </summary>
    /// <param name="left">The left eye's joint.</param>
    /// <param name="right">The right eye's joint.</param>
    /// <param name="head">The head's joint, which carries the eyes.</param>
    /// <param name="systems">The group that holds what animators don't see.</param>
    /// <param name="space">What the control that they look at hangs under: the world, or the head's control.</param>
    /// <param name="options">What they are called, and how far they look.</param>
    /// <returns>The eyes' handles.</returns>
    [Recipe]
    public Eyes Eyes(
        Joint left, Joint right, Joint head, Group systems, Node space, EyesOptions? options = null, [CallerFilePath] string file = "", [CallerLineNumber] int line = 0) =>
        Eyes(left, right, head, systems, space, options, Place(file, line))!;

    internal Eyes Eyes(Joint left, Joint right, Joint head, Group systems, Node space, EyesOptions? options, PlaceId place) =>
        EyesRecipe.Build(this, left, right, head, systems, space, options ?? new EyesOptions(), conventions, place);

    /// <summary>
    /// Builds a tail: controls that turn it joint by joint, and one that bends all of it, each joint by its share. Its page, <c>src/Condyle/Recipes/Tail.md</c>, shows the same written out.
    /// </summary>
    /// <param name="bones">The tail's joints.</param>
    /// <param name="name">What it is called in names: <c>tail</c>.</param>
    /// <param name="under">What carries its root: the hips' control.</param>
    /// <param name="options">How the bend is shared.</param>
    /// <returns>The tail's handles.</returns>
    /// <exception cref="ArgumentException">The name is empty.</exception>
    [Recipe]
    public Tail Tail(Chain bones, string name, Node under, TailOptions? options = null, [CallerFilePath] string file = "", [CallerLineNumber] int line = 0) =>
        Tail(bones, name, under, options, Place(file, line))!;

    internal Tail? Tail(Chain bones, Text name, Node under, TailOptions? options, PlaceId place) =>
        TailRecipe.Build(this, bones, RecipeNames.Unsided(name, conventions), under, options ?? new TailOptions(), place);

    /// <summary>Builds what is like a tail on each side: a wing, an ear, a fin.</summary>
    /// <param name="bones">Its joints.</param>
    /// <param name="name">What it is called in names, without its side: <c>wing</c>.</param>
    /// <param name="side">Its side.</param>
    /// <param name="under">What carries its root: the chest's control.</param>
    /// <param name="options">How the bend is shared.</param>
    /// <returns>Its handles.</returns>
    /// <exception cref="ArgumentException">The name is empty, or the side is null.</exception>
    [Recipe]
    public Tail Tail(Chain bones, string name, Side side, Node under, TailOptions? options = null, [CallerFilePath] string file = "", [CallerLineNumber] int line = 0) =>
        Tail(bones, name, Given.ASide(side, "A tail"), under, options, Place(file, line))!;

    internal Tail? Tail(Chain bones, Text name, Side? side, Node under, TailOptions? options, PlaceId place) =>
        side is null ? null : TailRecipe.Build(this, bones, new RecipeNames(name, side, conventions), under, options ?? new TailOptions(), place);
}
