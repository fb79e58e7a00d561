using Condyle.Evaluation;

namespace Condyle.Runtime.Compilation;

/// <summary>Puts the responses onto the planned nodes and morph targets that they set.</summary>
internal sealed class ResponsePlan
{
    private readonly RigPlan plan;

    public ResponsePlan(RigResponses responses, RigPlan plan)
    {
        this.plan = plan;
        foreach (var response in responses.Channels)
        {
            var terms = response.Terms;
            plan[response.Node].Response = new ResponseWriter(
                plan[response.Node],
                [.. terms.Select(item => InputOf(item.Term))],
                [.. terms.Select(item => ((int)item.Way * 3) + (int)item.Axis)],
                [.. terms.Select(item => item.Term.AtRest)]);
        }

        Morphs = [.. responses.Morphs.Select((morph, index) => new MorphWriter(index, [.. morph.Terms.Select(InputOf)]))];
    }

    public IReadOnlyList<MorphWriter> Morphs { get; }

    private CurveInput InputOf(ResponseTerm term) => new(term.Curve, plan.Inputs.SlotOf(term.Source.Id), plan.Measures.Of(term.Source));
}
