using System.Reflection;
using System.Runtime.CompilerServices;

namespace Condyle.Tests.Authoring;

/// <summary>A handle is a number in the log of its draft: in another draft it would stand for whatever has that number there.</summary>
public class HandleOfAnotherRigTests
{
    public static TheoryData<string, int> Takers
    {
        get
        {
            var (rig, takers) = (new RigWithEverything(), new TheoryData<string, int>());
            foreach (var method in Methods())
            {
                var parameters = method.GetParameters();
                for (var i = 0; i < parameters.Length; i++)
                {
                    // Two things make a handle's own rig known: the one that is spoken to, or the one beside it.
                    if (rig.IsOfARig(parameters[i].ParameterType) && (!method.IsStatic || parameters.Count(each => rig.IsOfARig(each.ParameterType)) > 1))
                        takers.Add(method.ToString()! + method.DeclaringType, i);
                }
            }

            return takers;
        }
    }

    [Theory]
    [MemberData(nameof(Takers))]
    public void Whatever_takes_a_handle_refuses_that_of_another_rig(string member, int parameter)
    {
        var method = Methods().Single(each => each.ToString()! + each.DeclaringType == member);
        var (own, other) = (new RigWithEverything(), new RigWithEverything());
        var arguments = method.GetParameters().Select((each, i) => each switch
        {
            _ when i == parameter => other.Of(each.ParameterType),
            _ when each.IsDefined(typeof(CallerLineNumberAttribute)) => 1,
            { HasDefaultValue: true } when !own.IsOfARig(each.ParameterType) => each.DefaultValue is DBNull ? null : each.DefaultValue,
            _ => own.Of(each.ParameterType),
        }).ToArray();

        var thrown = Assert.Throws<TargetInvocationException>(() => method.Invoke(method.IsStatic ? null : own.Of(method.DeclaringType!), arguments)).InnerException;

        Assert.Contains("was made by another RigDraft", Assert.IsType<ArgumentException>(thrown).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void It_says_which_handle_it_was()
    {
        var (own, other) = (new RigWithEverything(), new RigWithEverything());
        var thrown = Assert.Throws<ArgumentException>(() => own.Rig.Control("hand").Under(other.Rig.Control("kept")));
        Assert.StartsWith("Node 'kept' was made by another RigDraft", thrown.Message, StringComparison.Ordinal);
    }

    private static IEnumerable<MethodInfo> Methods() => typeof(RigDraft).Assembly.GetExportedTypes()
        .Where(type => type == typeof(RigDraft) || type == typeof(Weight) || typeof(IHandle).IsAssignableFrom(type))
        .SelectMany(type => type.GetMethods(BindingFlags.Public | BindingFlags.Instance | BindingFlags.Static | BindingFlags.DeclaredOnly))
        .Where(method => method.Name is not ("Equals" or "op_Equality" or "op_Inequality"));
}
