using Condyle.Model;
using Condyle.Naming;

namespace Condyle.Recipes;

/// <summary>What a recipe calls its nodes, as the team has it: the part, then what it is, then the side.</summary>
/// <param name="Part">What is built: <c>arm</c>.</param>
/// <param name="Mark">The side's mark: <c>_left</c>.</param>
/// <param name="GroupSuffix">How groups end.</param>
internal readonly record struct RecipeNames(Text Part, Text Mark, Text GroupSuffix)
{
    public RecipeNames(Text part, Side side, Conventions conventions)
        : this(part, conventions.MarkOf(side), conventions.GroupSuffix)
    {
    }

    /// <summary>For what stands in the middle: <c>spine_group</c>.</summary>
    public static RecipeNames Unsided(Text part, Conventions conventions) => new(part, "", conventions.GroupSuffix);

    /// <summary>The group of all of it: <c>arm_left_group</c>.</summary>
    public Text Group => Part + Mark + GroupSuffix;

    /// <summary>A group of a part of it: <c>foot_heel_left_group</c>.</summary>
    public Text GroupOf(Text what) => Of(what) + GroupSuffix;

    /// <summary><c>arm_root_left</c>.</summary>
    public Text Of(Text what) => Part + "_" + what + Mark;

    /// <summary>A name of its own with the side: <c>hand_left</c>.</summary>
    public Text Sided(Text name) => name + Mark;
}
