using Condyle.Evaluation;
using CsCheck;

namespace Condyle.Tests.Evaluation;

/// <summary>What an animator does to the arm, in words of the world.</summary>
internal sealed record ArmMotion(
    Vector3d Hand, Quaterniond HandTurn, Vector3d Pole, Quaterniond Shoulder, Quaterniond Elbow, Vector3d Chest, Quaterniond ChestTurn)
{
    public static Gen<ArmMotion> Any { get; } = Gen.Select(
        Evaluation.Any.Vector, Evaluation.Any.Rotation, Evaluation.Any.Vector, Evaluation.Any.Rotation, Evaluation.Any.Rotation, Evaluation.Any.Vector, Evaluation.Any.Rotation)
        .Select((hand, handTurn, pole, shoulder, elbow, chest, chestTurn) =>
            new ArmMotion(hand * 0.1, handTurn, pole * 0.1, shoulder, elbow, chest * 0.05, chestTurn));
}
