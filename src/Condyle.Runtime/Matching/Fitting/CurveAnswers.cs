using Condyle.Evaluation;

namespace Condyle.Runtime.Matching.Fitting;

/// <summary>What the controls of a curve were set to.</summary>
/// <param name="Channels">The channels of the controls that it goes through.</param>
/// <param name="Stretch">The value of the switch by which it stretches.</param>
/// <param name="Off">The sum of the squares of what its joints are off then.</param>
/// <param name="Holds">Whether they are where they should be.</param>
internal sealed record CurveAnswer(IReadOnlyList<Trs> Channels, double Stretch, double Off, bool Holds)
{
    /// <summary>What they were off when all starts had been tried, this time or the last.</summary>
    public double Searched { get; init; } = Off;
}

/// <summary>The answers of a motion's last frame, from which its next frame starts. A curve is found by the last control that it goes through.</summary>
internal sealed class CurveAnswers
{
    private readonly Dictionary<int, CurveAnswer> last = [];

    public CurveAnswer? Of(Handle control) => last.GetValueOrDefault(control.Index);

    public void Take(Handle control, CurveAnswer answer) => last[control.Index] = answer;
}
