using Condyle.Model;

namespace Condyle.Evaluation;

/// <summary>What a two-bone IK was told beside its goal and its pole.</summary>
/// <param name="Stretch">The weight by which the bones lengthen.</param>
/// <param name="Most">How many times their length they have at most.</param>
/// <param name="Softness">The part of the reach that is approached smoothly, as a share of the bones' length, so that it grows with the character.</param>
/// <param name="Turner">The dial or the measured angle that turns the plane, in degrees.</param>
/// <param name="Unturned">Its value at which the plane isn't turned.</param>
internal sealed record TwoBoneOptions(WeightPolynomial Stretch, double Most, double Softness, RigElement? Turner, double Unturned)
{
    /// <exception cref="RigGeometryException">An option isn't known, or is out of its range.</exception>
    public static TwoBoneOptions Of(RigTwoBone solver, RestPose rest)
    {
        var stretch = Facts.Known(solver.Stretch, $"How {solver.Title} stretches");
        var most = stretch is null ? 1 : Facts.Known(stretch.Most, $"The greatest stretch of {solver.Title}");
        if (!(most >= 1))
            throw new RigGeometryException($"{solver.Title} stretches its bones to {Invariant.Print(most)} times their length at most. Give a number of 1 or more.", solver);
        var metres = Facts.Known(solver.Softness, $"The softness of {solver.Title}");
        if (!(metres >= 0))
            throw new RigGeometryException($"{solver.Title} softens the last {Invariant.Print(metres)} m of its reach. Give a distance of 0 or more.", solver);
        var turner = Facts.Known(solver.PlaneTurn, $"By what {solver.Title} turns its plane");
        var length = ChainLength.AtRest(solver.Copy!, rest);
        return new(
            stretch?.Weight ?? WeightPolynomial.Zero, most, length > 0 ? metres / length : 0,
            turner, turner is RigDial dial ? Facts.Known(dial.AtRest, $"The default of {dial.Title}") : 0);
    }
}
