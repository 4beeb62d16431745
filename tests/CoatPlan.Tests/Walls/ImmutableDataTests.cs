using System.Reflection;
using System.Runtime.CompilerServices;

namespace CoatPlan.Tests.Walls;

/// <summary>What crosses a room's door cannot change after it was made.</summary>
public class ImmutableDataTests
{
    [Theory]
    [InlineData("CoatPlan.Core")]
    [InlineData("CoatPlan.Sheets")]
    public void Public_data_cannot_be_changed(string assembly)
    {
        Assembly.Load(assembly).GetExportedTypes().SelectMany(Changeable).ShouldBeEmpty();
    }

    [Fact]
    public void Public_records_are_sealed_or_abstract()
    {
        Assembly.Load("CoatPlan.Core").GetExportedTypes().Where(type => type.IsClass && !type.IsSealed && !type.IsAbstract).Select(type => type.FullName).ShouldBeEmpty();
    }

    [Fact]
    public void Data_that_can_be_changed_is_seen()
    {
        Changeable(typeof(Samples.Changeable)).ShouldBe(["Changeable.Name can be set", "Changeable.Items is a List`1"], ignoreOrder: true);
    }

    private static IEnumerable<string> Changeable(Type type)
    {
        const BindingFlags All = BindingFlags.Public | BindingFlags.Instance | BindingFlags.Static | BindingFlags.DeclaredOnly;
        foreach (var property in type.GetProperties(All))
        {
            if (property.SetMethod is { IsPublic: true } set && !set.ReturnParameter.GetRequiredCustomModifiers().Contains(typeof(IsExternalInit)))
            {
                yield return $"{type.Name}.{property.Name} can be set";
            }

            if (IsChangeableCollection(property.PropertyType))
            {
                yield return $"{type.Name}.{property.Name} is a {property.PropertyType.Name}";
            }
        }

        foreach (var field in type.GetFields(All).Where(field => !type.IsEnum && !field.IsInitOnly && !field.IsLiteral))
        {
            yield return $"{type.Name}.{field.Name} can be set";
        }
    }

    private static bool IsChangeableCollection(Type type) =>
        type.IsArray || (type.IsGenericType && type.GetGenericTypeDefinition() is var open
            && (open == typeof(List<>) || open == typeof(IList<>) || open == typeof(Dictionary<,>) || open == typeof(IDictionary<,>) || open == typeof(HashSet<>) || open == typeof(ISet<>)));
}
