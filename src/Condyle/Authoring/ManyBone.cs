using System.Runtime.CompilerServices;
using Condyle.Model;

namespace Condyle;

/// <summary>A sentence that solves a copy of any number of bones: its tip reaches a goal and its bend faces a pole.</summary>
public readonly record struct ManyBone : IHandle
{
    private readonly RigDraft? draft;
    private readonly int id;

    internal ManyBone(RigDraft draft, int id)
    {
        this.draft = draft;
        this.id = id;
    }

    internal RigDraft Draft => HandleGuard.Of(draft, "many-bone IK");

    internal int Id => HandleGuard.Of(draft, "many-bone IK", id);

    RigDraft IHandle.Draft => Draft;

    int IHandle.Id => Id;

    /// <summary>Sets the goal: the tip goes to its place, as far as the bones reach, and turns with it, keeping the turn it has from the goal at rest.</summary>
    /// <param name="goal">The node to reach.</param>
    /// <returns>The solver.</returns>
    [OverloadResolutionPriority(1)]
    public ManyBone Reach(Node goal, [CallerFilePath] string file = "", [CallerLineNumber] int line = 0) => Reach(goal, Draft.Place(file, line));

    /// <inheritdoc cref="Reach(Node, string, int)"/>
    public ManyBone Reach(Node goal) => Reach(goal, PlaceId.None);

    internal ManyBone Reach(Node goal, PlaceId place)
    {
        Draft.Record(new GoalSet(place, Id, goal.IdIn(Draft)));
        return this;
    }

    /// <summary>Sets the pole: the point that the bend faces. Without one the bend turns with the chain's parent.</summary>
    /// <param name="pole">The node to face.</param>
    /// <returns>The solver.</returns>
    [OverloadResolutionPriority(1)]
    public ManyBone Face(Node pole, [CallerFilePath] string file = "", [CallerLineNumber] int line = 0) => Face(pole, Draft.Place(file, line));

    /// <inheritdoc cref="Face(Node, string, int)"/>
    public ManyBone Face(Node pole) => Face(pole, PlaceId.None);

    internal ManyBone Face(Node pole, PlaceId place)
    {
        Draft.Record(new PoleSet(place, Id, pole.IdIn(Draft)));
        return this;
    }

    /// <summary>Keeps a joint's bone within a cone about where it rests on the joint above, though the tip may then miss the goal.</summary>
    /// <param name="joint">A joint of the chain that was copied; not its tip, which turns with the goal.</param>
    /// <param name="degrees">How far the bone may turn from where it rests, in degrees.</param>
    /// <returns>The solver.</returns>
    /// <exception cref="ArgumentException">The joint isn't in the chain, or is its tip.</exception>
    public ManyBone Limiting(Joint joint, float degrees, [CallerFilePath] string file = "", [CallerLineNumber] int line = 0) =>
        Limiting(joint, degrees, Draft.Place(file, line));

    internal ManyBone Limiting(Joint joint, Fact<float> degrees, PlaceId place)
    {
        Given.Finite(degrees, "The limit of a joint");
        Draft.CheckHasBone(Id, joint.IdIn(Draft));
        Draft.Record(new ConeSet(place, Id, joint.IdIn(Draft), degrees));
        return this;
    }

    /// <summary>Says when the solving may end; without it, at a millionth of the chain's length or after 32 rounds.</summary>
    /// <param name="metres">How near to the goal the tip must be, in metres at the delivered size.</param>
    /// <param name="rounds">After how many rounds it ends at the latest.</param>
    /// <returns>The solver.</returns>
    public ManyBone Within(float metres, int rounds, [CallerFilePath] string file = "", [CallerLineNumber] int line = 0) =>
        Within(metres, rounds, Draft.Place(file, line));

    internal ManyBone Within(Fact<float> metres, Fact<int> rounds, PlaceId place)
    {
        Given.Finite(metres, "How near the tip must be");
        Draft.Record(new SolverEndSet(place, Id, metres, rounds));
        return this;
    }

    internal static ManyBone Open(RigDraft draft) => new(draft, draft.Unknown(UnknownKind.Solver));
}
