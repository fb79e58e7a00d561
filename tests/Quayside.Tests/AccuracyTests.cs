using Condyle;
using Condyle.Runtime;
using Condyle.Tests.Shared;

namespace Quayside.Tests;

/// <summary>What the design grants a character of 1.8 m, of float against double precision, holds through all that the dock worker can do.</summary>
public sealed class AccuracyTests
{
    private const double Metres = 10e-6, Degrees = 0.0005;

    [Fact]
    public void No_joint_of_the_range_of_motion_is_further_from_the_double_reference_than_a_float_needs()
    {
        var rig = RigCompiler.Compile(Rig.Build(new Stevedore()));
        var beyond = ReferenceDistance.Over(rig, RangeOfMotion.Of(rig), framesPerSecond: 30).Where(joint => joint.Metres > Metres || joint.Degrees > Degrees);
        Assert.Empty(beyond);
    }
}
