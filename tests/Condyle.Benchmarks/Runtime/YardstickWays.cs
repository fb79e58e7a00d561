using Condyle.Runtime;

namespace Condyle.Benchmarks.Runtime;

/// <summary>The yardstick in each way in which it is evaluated, posed and seen to be the same rig.</summary>
internal sealed class YardstickWays
{
    public YardstickWays()
    {
        var rig = RigCompiler.Compile(Rig.Examine(new Yardstick()));
        One = rig.NewInstance();
        (Eight, Sixteen) = (new RigCrowd(rig, 8, 8), new RigCrowd(rig, 16, 16));
        YardstickMotion.Set(ByHand, 1);
        YardstickMotion.Set(One, 1);
        foreach (var crowd in new[] { Eight, Sixteen })
        {
            for (var member = 0; member < crowd.Count; member++)
                YardstickMotion.Set(crowd[member], member + 1);
            crowd.Evaluate();
        }

        ByHand.Evaluate();
        One.Evaluate();
        if (YardstickMotion.Apart(ByHand, One) is > 1e-4f and var apart)
            throw new InvalidOperationException($"The two ways to evaluate the yardstick are {apart} m apart: what is measured isn't the same rig.");
    }

    public HandWritten ByHand { get; } = new();

    public RigInstance One { get; }

    public RigCrowd Eight { get; }

    public RigCrowd Sixteen { get; }
}
