using Condyle.Evaluation;

namespace Condyle.Runtime.Compilation;

/// <summary>A measured angle. It writes no channel but an input.</summary>
internal sealed class MeasureWriter(PlannedNode node, Axis axis, int input) : Writer
{
    public PlannedNode Node => node;

    public Axis Axis => axis;

    public int Input => input;

    /// <summary>What only an animator moves is there before anything else.</summary>
    public override IEnumerable<PlannedNode> Inputs => node.IsWritten ? [node] : [];

    public override IEnumerable<PlannedNode> Reads => Inputs;
}

/// <summary>A curve of a value, which is measured or set.</summary>
internal sealed record CurveInput(ResponseCurve Curve, int Input, MeasureWriter? Measure);

/// <summary>What curves need: the angles that they are curves of.</summary>
internal abstract class CurveWriter(IReadOnlyList<CurveInput> curves) : Writer
{
    public IReadOnlyList<CurveInput> Curves => curves;

    public IEnumerable<MeasureWriter> Measures => curves.Select(curve => curve.Measure).OfType<MeasureWriter>();

    public override IEnumerable<PlannedNode> Inputs => Measures.SelectMany(measure => measure.Inputs);

    public override IEnumerable<PlannedNode> Reads => Measures.SelectMany(measure => measure.Reads);

    public override int Level => 1 + Measures.Select(measure => measure.Level).DefaultIfEmpty(0).Max();
}

/// <summary>All responses on a node's channels.</summary>
internal sealed class ResponseWriter(PlannedNode target, IReadOnlyList<CurveInput> curves, IReadOnlyList<int> channels, IReadOnlyList<double> atRest) : CurveWriter(curves)
{
    public PlannedNode Target => target;

    /// <summary>What each curve sets: 0 to 2 the moves, 3 to 5 the turns, 6 to 8 the scales along X, Y and Z.</summary>
    public IReadOnlyList<int> Channels => channels;

    /// <summary>Each curve's value at rest, from which it counts.</summary>
    public IReadOnlyList<double> AtRest => atRest;

    public override bool WritesScale => channels.Any(channel => channel >= 6);

    /// <summary>They come on top of what another sentence writes.</summary>
    public override int Level => Math.Max(base.Level, 1 + target.WritersLevel);
}

/// <summary>The weight of a morph target.</summary>
internal sealed class MorphWriter(int index, IReadOnlyList<CurveInput> curves) : CurveWriter(curves)
{
    public int Index => index;
}
