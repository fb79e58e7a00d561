using System.Runtime.CompilerServices;
using Condyle.Model;

namespace Condyle;

/// <summary>A sentence that solves a copy of two bones in closed form: its tip reaches a goal and its bend faces a pole.</summary>
public readonly record struct TwoBone : IHandle
{
    private const float MostStretch = 1.5f;

    private readonly RigDraft? draft;
    private readonly int id;

    internal TwoBone(RigDraft draft, int id)
    {
        this.draft = draft;
        this.id = id;
    }

    internal RigDraft Draft => HandleGuard.Of(draft, "two-bone IK");

    internal int Id => HandleGuard.Of(draft, "two-bone IK", id);

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
        Draft.Record(new GoalSet(place, Id, goal.IdIn(Draft)));
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
        Draft.Record(new PoleSet(place, Id, pole.IdIn(Draft)));
        return this;
    }

    /// <summary>Lengthens both bones alike where the goal is beyond reach, so that the tip comes nearer to it.</summary>
    /// <param name="weight">How much: at 0 the bones keep their length, at 1 the tip reaches the goal.</param>
    /// <param name="most">How many times their length the bones have at most, 1 or more.</param>
    /// <returns>The solver.</returns>
    [OverloadResolutionPriority(1)]
    public TwoBone Stretching(Weight weight, float most = MostStretch, [CallerFilePath] string file = "", [CallerLineNumber] int line = 0) =>
        Stretching(weight, most, Draft.Place(file, line));

    /// <inheritdoc cref="Stretching(Weight, float, string, int)"/>
    public TwoBone Stretching(Weight weight) => Stretching(weight, MostStretch, PlaceId.None);

    internal TwoBone Stretching(Weight weight, PlaceId place) => Stretching(weight, MostStretch, place);

    internal TwoBone Stretching(Weight weight, Fact<float> most, PlaceId place)
    {
        Given.Finite(most, "The greatest stretch");
        Draft.Record(new StretchSet(place, Id, weight.In(Draft), most));
        return this;
    }

    /// <summary>Approaches the last part of the reach smoothly, so that the middle joint doesn't snap straight: there the tip stays a little short of the goal.</summary>
    /// <param name="metres">How long that part is, in metres at the delivered size. It begins no nearer than where the tip rests, so that rest holds.</param>
    /// <returns>The solver.</returns>
    [OverloadResolutionPriority(1)]
    public TwoBone Softening(float metres, [CallerFilePath] string file = "", [CallerLineNumber] int line = 0) => Softening(metres, Draft.Place(file, line));

    /// <inheritdoc cref="Softening(float, string, int)"/>
    public TwoBone Softening(float metres) => Softening(metres, PlaceId.None);

    internal TwoBone Softening(Fact<float> metres, PlaceId place)
    {
        Given.Finite(metres, "The soft part of the reach");
        Draft.Record(new SoftnessSet(place, Id, metres));
        return this;
    }

    /// <summary>Turns the plane of the bend about the line from root to goal by a dial in degrees, on top of what the pole does; at the dial's default it isn't turned.</summary>
    /// <param name="dial">The dial.</param>
    /// <returns>The solver.</returns>
    [OverloadResolutionPriority(1)]
    public TwoBone TurningPlane(Dial dial, [CallerFilePath] string file = "", [CallerLineNumber] int line = 0) => TurningPlane(dial, Draft.Place(file, line));

    /// <inheritdoc cref="TurningPlane(Dial, string, int)"/>
    public TwoBone TurningPlane(Dial dial) => TurningPlane(dial, PlaceId.None);

    internal TwoBone TurningPlane(Dial dial, PlaceId place) => TurnPlane(dial.IdIn(Draft), place);

    /// <summary>Turns the plane of the bend about the line from root to goal by a measured angle, on top of what the pole does.</summary>
    /// <param name="measure">The angle, for instance how far the goal is turned about its own axis.</param>
    /// <returns>The solver.</returns>
    [OverloadResolutionPriority(1)]
    public TwoBone TurningPlane(Measure measure, [CallerFilePath] string file = "", [CallerLineNumber] int line = 0) => TurningPlane(measure, Draft.Place(file, line));

    /// <inheritdoc cref="TurningPlane(Measure, string, int)"/>
    public TwoBone TurningPlane(Measure measure) => TurningPlane(measure, PlaceId.None);

    internal TwoBone TurningPlane(Measure measure, PlaceId place) => TurnPlane(measure.IdIn(Draft), place);

    internal static TwoBone Open(RigDraft draft) => new(draft, draft.Unknown(UnknownKind.Solver));

    private TwoBone TurnPlane(int by, PlaceId place)
    {
        Draft.Record(new PlaneTurned(place, Id, by));
        return this;
    }
}
