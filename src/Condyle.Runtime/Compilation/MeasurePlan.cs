using Condyle.Evaluation;
using Condyle.Model;

namespace Condyle.Runtime.Compilation;

/// <summary>Plans each measured angle once, whoever asks for it.</summary>
internal sealed class MeasurePlan(RigPlan plan)
{
    private readonly Dictionary<RigMeasure, MeasureWriter> measures = [];

    /// <summary>What measures a value; none for one that is set.</summary>
    public MeasureWriter? Of(RigElement value)
    {
        if (value is not RigMeasure measure)
            return null;
        if (!measures.TryGetValue(measure, out var found))
        {
            var node = plan[MeasuredAngle.NodeOf(measure)];
            node.IsMeasured = true;
            measures[measure] = found = new(node, MeasuredAngle.AxisOf(measure), plan.Inputs.SlotOf(measure.Id));
        }

        return found;
    }
}
