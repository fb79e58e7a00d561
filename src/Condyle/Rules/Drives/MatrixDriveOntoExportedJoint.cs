using Condyle.Model;
using Condyle.Naming;

namespace Condyle.Rules;

/// <summary>CDY3001: an exported joint can't be driven by matrix, because nothing of a placement can be baked or exported.</summary>
internal sealed class MatrixDriveOntoExportedJoint : ModelRule
{
    public override string Id => "CDY3001";

    public override string Title => "Matrix drive onto an exported joint";

    public override Severity Severity => Severity.Error;

    public override string Fix => "by channels";

    public override string Source => "glTF 2.0, section 3.11: animations target translation, rotation, scale and weights";

    protected override IEnumerable<Finding> Check(RigModel model, Conventions conventions)
    {
        foreach (var drive in model.Drives)
        {
            if (drive.Target is not { IsExported: true } joint)
                continue;
            foreach (var source in drive.Sources.Where(source => source.Way == DriveWay.Matrix))
            {
                var moves = joint.Role.TryKnown(out var role) ? role == JointRole.Helper ? "exported joint" : "deform joint" : "exported joint";
                yield return new Finding(
                    this,
                    drive,
                    $"The {moves} '{joint.Name}' follows {source.Source?.Title ?? "its source"} by matrix: an engine reads a joint's own translation, rotation and scale, so nothing of this motion is exported and the joint stands still in the game. Drive it by channels.",
                    source.Place)
                {
                    ActsOn = joint,
                    Related = drive.Place == source.Place ? [] : [drive.Place],
                    Repairs = [new CallInstead(source.Event, nameof(Drive.ByChannels), $"Drive '{joint.Name}' by channels")],
                };
            }
        }
    }
}
