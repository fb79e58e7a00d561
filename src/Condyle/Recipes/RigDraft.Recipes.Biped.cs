using System.Runtime.CompilerServices;
using Condyle.Model;
using Condyle.Recipes;

namespace Condyle;

/// <content>The recipe of a whole character.</content>
public sealed partial class RigDraft
{
    /// <summary>
    /// Builds a whole biped of the other recipes: controls for the world and an offset, spine, neck, a head that looks, eyes, collars, arms, fingers, legs and feet that roll, twist joints,
    /// spaces, shapes and limits, as far as there are joints for them. Its page, <c>src/Condyle/Recipes/Biped.md</c>, shows the same written out.
    /// </summary>
    /// <param name="joints">Its joints.</param>
    /// <param name="options">What its parts are like, and what it has besides.</param>
    /// <returns>The biped's handles.</returns>
    /// <exception cref="ArgumentException">A chain doesn't hang together, or a part is empty.</exception>
    [Recipe]
    [OverloadResolutionPriority(1)]
    public Biped Biped(BipedJoints joints, BipedOptions? options = null, [CallerFilePath] string file = "", [CallerLineNumber] int line = 0) =>
        Biped(Given.Joints(joints), options, Place(file, line))!;

    /// <inheritdoc cref="Biped(BipedJoints, BipedOptions?, string, int)"/>
    [Recipe]
    public Biped Biped(BipedJoints joints) => Biped(Given.Joints(joints), PlaceId.None)!;

    internal Biped? Biped(BipedJoints? joints, PlaceId place) => Biped(joints, null, place);

    internal Biped? Biped(BipedJoints? joints, BipedOptions? options, PlaceId place) =>
        joints is null ? null : BipedRecipe.Build(this, joints, options ?? new BipedOptions(), conventions, place);
}
