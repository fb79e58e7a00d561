using System.Runtime.CompilerServices;
using Condyle.Model;

namespace Condyle;

/// <summary>A sentence that solves a copy of two bones in closed form: its tip reaches a goal and its bend faces a pole.</summary>
public readonly record struct TwoBone : IHandle
{
    private readonly RigDraft? draft;
    private readonly int id;

    internal TwoBone(RigDraft draft, int id)
    {
        this.draft = draft;
        this.id = id;
    }

    internal RigDraft Draft => HandleGuard.Of(draft, "two-bone IK");

    internal int Id => id;

    RigDraft IHandle.Draft => Draft;

    int IHandle.Id => Id;

    /// <summary>Sets the goal: the tip goes to its place, as far as the bones reach, and turns with it, keeping the turn it has from the goal at rest.</summary>
    /// <param name="goal">The node to reach.</param>
    /// <returns>The solver.</returns>
    [OverloadResolutionPriority(1)]
    public TwoBone Reach(Node goal, [CallerFilePath] string file = "", [CallerLineNumber] int line = 0) => Reach(goal, Draft.Place(file, line));

    /// <inheritdoc cref="Reach(Node, string, int)"/>
    public TwoBone Reach(Node goal) => Reach(goal, PlaceId.None);

    internal TwoBone Reach(Node goal, PlaceId place)
    {
        Draft.Record(new GoalSet(place, Id, goal.Id));
        return this;
    }

    /// <summary>Sets the pole: the point that the bend faces. Without one the bend turns with the chain's parent.</summary>
    /// <param name="pole">The node to face.</param>
    /// <returns>The solver.</returns>
    [OverloadResolutionPriority(1)]
    public TwoBone Face(Node pole, [CallerFilePath] string file = "", [CallerLineNumber] int line = 0) => Face(pole, Draft.Place(file, line));

    /// <inheritdoc cref="Face(Node, string, int)"/>
    public TwoBone Face(Node pole) => Face(pole, PlaceId.None);

    internal TwoBone Face(Node pole, PlaceId place)
    {
        Draft.Record(new PoleSet(place, Id, pole.Id));
        return this;
    }

    internal static TwoBone Open(RigDraft draft) => new(draft, draft.Unknown(UnknownKind.Solver));
}
