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
    [Recipe]
    public Limb Limb(
        Chain bones, string name, Side side, Node under, Group systems, Node space, LimbOptions? options = null, [CallerFilePath] string file = "", [CallerLineNumber] int line = 0) =>
        Limb(bones, name, side, under, systems, space, options, Place(file, line))!;

    internal Limb? Limb(Chain bones, Text name, Side? side, Node under, Group systems, Node space, LimbOptions? options, PlaceId place) =>
        side is null ? null : LimbRecipe.Build(this, bones, new RecipeNames(name, side, conventions), under, systems, space, options ?? new LimbOptions(), place);
}
