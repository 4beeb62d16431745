using System.Reflection.Metadata;

namespace CoatPlan.Tests.Walls;

/// <summary>Collects every type that a signature names.</summary>
internal sealed class NamedTypes(List<EntityHandle> found) : ISignatureTypeProvider<int, int>
{
    public int GetArrayType(int elementType, ArrayShape shape) => 0;

    public int GetByReferenceType(int elementType) => 0;

    public int GetFunctionPointerType(MethodSignature<int> signature) => 0;

    public int GetGenericInstantiation(int genericType, ImmutableArray<int> typeArguments) => 0;

    public int GetGenericMethodParameter(int genericContext, int index) => 0;

    public int GetGenericTypeParameter(int genericContext, int index) => 0;

    public int GetModifiedType(int modifier, int unmodifiedType, bool isRequired) => 0;

    public int GetPinnedType(int elementType) => 0;

    public int GetPointerType(int elementType) => 0;

    public int GetPrimitiveType(PrimitiveTypeCode typeCode) => 0;

    public int GetSZArrayType(int elementType) => 0;

    public int GetTypeFromDefinition(MetadataReader reader, TypeDefinitionHandle handle, byte rawTypeKind) => Add(handle);

    public int GetTypeFromReference(MetadataReader reader, TypeReferenceHandle handle, byte rawTypeKind) => Add(handle);

    public int GetTypeFromSpecification(MetadataReader reader, int genericContext, TypeSpecificationHandle handle, byte rawTypeKind) =>
        reader.GetTypeSpecification(handle).DecodeSignature(this, genericContext);

    private int Add(EntityHandle handle)
    {
        found.Add(handle);
        return 0;
    }
}
