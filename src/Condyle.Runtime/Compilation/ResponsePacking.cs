using Condyle.Runtime.Kernels;

namespace Condyle.Runtime.Compilation;

/// <summary>Gathers measured angles, responses and spaces into the arrays of their batches.</summary>
internal static class ResponsePacking
{
    public static MeasureBatch Measures(IReadOnlyList<MeasureWriter> measures) => new()
    {
        Inputs = [.. measures.Select(measure => measure.Input)],
        Channels = [.. measures.Select(measure => measure.Node.ChannelSlot)],
        RestInverses = Pack.Rotations([.. measures.Select(measure => measure.Node.Rest.Rotation.Inverse)]),
        Axes = [.. measures.Select(measure => measure.Axis)],
    };

    public static ResponseBatch Responses(IReadOnlyList<ResponseWriter> responses) => new()
    {
        Channels = [.. responses.Select(response => response.Target.ChannelSlot)],
        Bases = [.. responses.Select(response => response.Target.Falloff is null ? response.Target.BaseSlot : response.Target.ChannelSlot)],
        RestTurns = Pack.Rotations([.. responses.Select(response => response.Target.Rest.Rotation)]),
        Ends = Ends(responses.Select(response => response.Curves.Count)),
        Curves = CurvesOf([.. responses.SelectMany(response => response.Curves.Zip(response.AtRest))]),
        Components = [.. responses.SelectMany(response => response.Channels)],
    };

    public static MorphBatch Morphs(IReadOnlyList<MorphWriter> morphs) => new()
    {
        Morphs = [.. morphs.Select(morph => morph.Index)],
        Ends = Ends(morphs.Select(morph => morph.Curves.Count)),
        Curves = CurvesOf([.. morphs.SelectMany(morph => morph.Curves).Select(curve => (curve, 0.0))]),
    };

    public static SpaceBatch Spaces(IReadOnlyList<PlannedNode> carriers, WeightTable weights, bool isRigid)
    {
        var spaces = carriers.Select(carrier => (SpaceWriter)carrier.Writer!).ToList();
        var sources = spaces.SelectMany(space => space.Sources).ToList();
        return new()
        {
            Worlds = [.. carriers.Select(carrier => carrier.WorldSlot)],
            Ends = Ends(spaces.Select(space => space.Sources.Count)),
            Sources = [.. sources.Select(source => Slots.WorldOf(source.Source.Root))],
            Offsets = Pack.Frames([.. sources.Select(source => source.Source.Offset)]),
            RigidOffsets = isRigid ? [.. sources.Select(source => Pack.Rigid(source.Source.Offset))] : null,
            Weights = [.. sources.Select(source => weights.SlotOf(source.Weight))],
        };
    }

    /// <summary>Multiplies the Hermite form out, in double precision, and takes from each curve what it counts from.</summary>
    private static Curves CurvesOf(IReadOnlyList<(CurveInput Curve, double From)> curves)
    {
        var pieces = new List<(double Until, double From, double Value, double Slope, double Square, double Cube)>();
        var ends = new List<int>();
        foreach (var (curve, counted) in curves)
        {
            var keys = curve.Curve.Keys;
            var (first, last) = (keys[0], keys[^1]);
            pieces.Add((first.At, first.At, first.Value - counted, first.Arrives, 0, 0));
            for (var k = 0; k + 1 < keys.Count; k++)
            {
                var (from, to, d) = (keys[k], keys[k + 1], keys[k + 1].At - keys[k].At);
                var straight = (to.Value - from.Value) / d;
                pieces.Add((to.At, from.At, from.Value - counted, from.Leaves, ((3 * straight) - (2 * from.Leaves) - to.Arrives) / d, (from.Leaves + to.Arrives - (2 * straight)) / (d * d)));
            }

            pieces.Add((double.PositiveInfinity, last.At, last.Value - counted, last.Leaves, 0, 0));
            ends.Add(pieces.Count);
        }

        return new()
        {
            Ends = [.. ends],
            Until = [.. pieces.Select(piece => (float)piece.Until)],
            From = [.. pieces.Select(piece => (float)piece.From)],
            Values = [.. pieces.Select(piece => (float)piece.Value)],
            Slopes = [.. pieces.Select(piece => (float)piece.Slope)],
            Squares = [.. pieces.Select(piece => (float)piece.Square)],
            Cubes = [.. pieces.Select(piece => (float)piece.Cube)],
            Inputs = [.. curves.Select(curve => curve.Curve.Input)],
        };
    }

    private static int[] Ends(IEnumerable<int> lengths)
    {
        var end = 0;
        return [.. lengths.Select(length => end += length)];
    }
}
