using System.Runtime.CompilerServices;
using Condyle.Model;
using Condyle.Recipes;

namespace Condyle;

/// <content>Recipes of what controls ride.</content>
public sealed partial class RigDraft
{
    /// <summary>
    /// Lets a limb ride the customary spaces, by choices named <c>space</c>: its goal the world, the hips, the chest or the head, its pole the world or the goal;
    /// and its first turn goes with the body or stays as it lies in the world. Its page, <c>src/Condyle/Recipes/Spaces.md</c>, shows the same written out.
    /// </summary>
    /// <param name="limb">The limb.</param>
    /// <param name="spaces">What there is to ride.</param>
    /// <param name="options">What is picked at rest, and what rides.</param>
    /// <returns>The sentences of what it rides.</returns>
    /// <exception cref="ArgumentException">There is nothing to ride but the world, or what is to be first isn't there.</exception>
    [Recipe]
    public LimbSpaces Spaces(Limb limb, BodySpaces spaces, SpacesOptions? options = null, [CallerFilePath] string file = "", [CallerLineNumber] int line = 0) =>
        Spaces(limb ?? throw new ArgumentNullException(nameof(limb), "Spaces were given null for their limb. Give them what Limb has built."), Given.Spaces(spaces), options, Place(file, line))!;

    internal LimbSpaces? Spaces(Limb? limb, BodySpaces? spaces, SpacesOptions? options, PlaceId place) =>
        limb is null ? null : Spaces(spaces, options, place)?.Of(limb);

    /// <summary>
    /// Lets what a head looks at ride the customary spaces, by a choice named <c>space</c>, and its turn go with the body or stay as it lies in the world.
    /// Its page, <c>src/Condyle/Recipes/Spaces.md</c>, shows the same written out.
    /// </summary>
    /// <param name="head">The head.</param>
    /// <param name="spaces">What there is to ride; the head itself is left out.</param>
    /// <param name="options">What is picked at rest, and what rides.</param>
    /// <returns>The sentences of what it rides.</returns>
    /// <exception cref="ArgumentException">There is nothing to ride but the world, or what is to be first isn't there.</exception>
    [Recipe]
    public HeadSpaces Spaces(Head head, BodySpaces spaces, SpacesOptions? options = null, [CallerFilePath] string file = "", [CallerLineNumber] int line = 0) =>
        Spaces(head ?? throw new ArgumentNullException(nameof(head), "Spaces were given null for their head. Give them what Head has built."), Given.Spaces(spaces), options, Place(file, line))!;

    internal HeadSpaces? Spaces(Head? head, BodySpaces? spaces, SpacesOptions? options, PlaceId place) =>
        head is null ? null : Spaces(spaces, options, place)?.Of(head);

    /// <summary>Lets a control ride the customary spaces, by a choice named <c>space</c>: what eyes look at, a tool, a prop.</summary>
    /// <param name="control">The control.</param>
    /// <param name="spaces">What there is to ride.</param>
    /// <param name="options">What is picked at rest.</param>
    /// <returns>The sentence of what it rides.</returns>
    /// <exception cref="ArgumentException">There is nothing to ride but the world, or what is to be first isn't there.</exception>
    [Recipe]
    public Space Spaces(Control control, BodySpaces spaces, SpacesOptions? options = null, [CallerFilePath] string file = "", [CallerLineNumber] int line = 0) =>
        Spaces(control, Given.Spaces(spaces), options, Place(file, line))!.Value;

    internal Space? Spaces(Control control, BodySpaces? spaces, SpacesOptions? options, PlaceId place) => Spaces(spaces, options, place)?.Of(control);

    private SpacesRecipe? Spaces(BodySpaces? spaces, SpacesOptions? options, PlaceId place) =>
        spaces is null ? null : SpacesRecipe.Of(this, conventions, spaces, options ?? new SpacesOptions(), place);
}
