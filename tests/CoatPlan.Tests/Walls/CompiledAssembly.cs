using System.Collections.Concurrent;
using System.Reflection.Emit;
using System.Reflection.Metadata;
using System.Reflection.Metadata.Ecma335;
using System.Reflection.PortableExecutable;

namespace CoatPlan.Tests.Walls;

/// <summary>What the types of an assembly name, read from its metadata and from the code of its methods.</summary>
internal sealed class CompiledAssembly
{
    private static readonly Dictionary<int, OpCode> s_opCodes = typeof(OpCodes).GetFields()
        .Where(field => field.FieldType == typeof(OpCode)).Select(field => (OpCode)field.GetValue(null)!).ToDictionary(code => (int)(ushort)code.Value);

    private static readonly ConcurrentDictionary<string, Lazy<CompiledAssembly>> s_open = new(StringComparer.Ordinal);

    private readonly MetadataReader _reader;
    private readonly PEReader _file;
    private readonly string _name;
    private readonly HashSet<TypeUse> _uses = [];

    private CompiledAssembly(PEReader file)
    {
        _file = file;
        _reader = file.GetMetadataReader();
        _name = _reader.GetString(_reader.GetAssemblyDefinition().Name);
        foreach (var handle in _reader.TypeDefinitions)
        {
            ReadType(handle);
        }

        Uses = [.. _uses.OrderBy(use => use.ToString(), StringComparer.Ordinal)];
        References = [.. _reader.AssemblyReferences.Select(handle => _reader.GetString(_reader.GetAssemblyReference(handle).Name)).Order(StringComparer.Ordinal)];
    }

    public ImmutableArray<TypeUse> Uses { get; }

    /// <summary>Names of the assemblies that it refers to.</summary>
    public ImmutableArray<string> References { get; }

    /// <param name="file">Name of an assembly file beside the tests.</param>
    public static CompiledAssembly Open(string file) => s_open.GetOrAdd(file, name => new Lazy<CompiledAssembly>(() => Read(name))).Value;

    private static CompiledAssembly Read(string file)
    {
        using var stream = File.OpenRead(Path.Combine(AppContext.BaseDirectory, file));
        using var pe = new PEReader(stream);
        return new CompiledAssembly(pe);
    }

    private void ReadType(TypeDefinitionHandle handle)
    {
        var type = _reader.GetTypeDefinition(handle);
        var (name, space) = Outermost(handle);
        var named = new List<EntityHandle>();
        var provider = new NamedTypes(named);
        AddType(named, type.BaseType, provider);
        foreach (var implemented in type.GetInterfaceImplementations())
        {
            AddType(named, _reader.GetInterfaceImplementation(implemented).Interface, provider);
        }

        foreach (var parameter in type.GetGenericParameters().SelectMany(parameter => _reader.GetGenericParameter(parameter).GetConstraints()))
        {
            AddType(named, _reader.GetGenericParameterConstraint(parameter).Type, provider);
        }

        foreach (var field in type.GetFields())
        {
            _reader.GetFieldDefinition(field).DecodeSignature(provider, 0);
        }

        foreach (var attribute in type.GetCustomAttributes().Concat(type.GetMethods().SelectMany(method => _reader.GetMethodDefinition(method).GetCustomAttributes())))
        {
            AddMember(name, space, _reader.GetCustomAttribute(attribute).Constructor, named, provider);
        }

        foreach (var methodHandle in type.GetMethods())
        {
            var method = _reader.GetMethodDefinition(methodHandle);
            method.DecodeSignature(provider, 0);
            if (method.RelativeVirtualAddress != 0)
            {
                ReadCode(name, space, _file.GetMethodBody(method.RelativeVirtualAddress), named, provider);
            }
        }

        foreach (var target in named.Distinct())
        {
            Add(name, space, target, "", -1);
        }
    }

    private void ReadCode(string name, string space, MethodBodyBlock body, List<EntityHandle> named, NamedTypes provider)
    {
        if (!body.LocalSignature.IsNil)
        {
            _reader.GetStandaloneSignature(body.LocalSignature).DecodeLocalSignature(provider, 0);
        }

        foreach (var region in body.ExceptionRegions.Where(region => region.Kind == ExceptionRegionKind.Catch))
        {
            AddType(named, region.CatchType, provider);
        }

        var code = body.GetILReader();
        while (code.RemainingBytes > 0)
        {
            int value = code.ReadByte();
            var opCode = s_opCodes[value == 0xFE ? 0xFE00 | code.ReadByte() : value];
            switch (opCode.OperandType)
            {
                case OperandType.InlineMethod or OperandType.InlineField or OperandType.InlineTok or OperandType.InlineType:
                    AddMember(name, space, (EntityHandle)MetadataTokens.Handle(code.ReadInt32()), named, provider);
                    break;
                case OperandType.InlineSwitch:
                    int cases = code.ReadInt32();
                    code.Offset += 4 * cases;
                    break;
                case OperandType.InlineNone:
                    break;
                case OperandType.ShortInlineBrTarget or OperandType.ShortInlineI or OperandType.ShortInlineVar:
                    code.Offset += 1;
                    break;
                case OperandType.InlineVar:
                    code.Offset += 2;
                    break;
                case OperandType.InlineI8 or OperandType.InlineR:
                    code.Offset += 8;
                    break;
                default:
                    code.Offset += 4;
                    break;
            }
        }
    }

    private void AddMember(string name, string space, EntityHandle handle, List<EntityHandle> named, NamedTypes provider)
    {
        switch (handle.Kind)
        {
            case HandleKind.MemberReference:
                var member = _reader.GetMemberReference((MemberReferenceHandle)handle);
                int parameters = -1;
                if (member.GetKind() == MemberReferenceKind.Method)
                {
                    parameters = member.DecodeMethodSignature(provider, 0).ParameterTypes.Length;
                }
                else
                {
                    member.DecodeFieldSignature(provider, 0);
                }

                var owner = new List<EntityHandle>();
                AddType(owner, member.Parent, new NamedTypes(owner));
                named.AddRange(owner);
                if (owner.Count > 0)
                {
                    Add(name, space, owner[0], _reader.GetString(member.Name), parameters);
                }

                break;
            case HandleKind.MethodSpecification:
                var generic = _reader.GetMethodSpecification((MethodSpecificationHandle)handle);
                generic.DecodeSignature(provider, 0);
                AddMember(name, space, generic.Method, named, provider);
                break;
            case HandleKind.MethodDefinition:
                var method = _reader.GetMethodDefinition((MethodDefinitionHandle)handle);
                int count = method.DecodeSignature(provider, 0).ParameterTypes.Length;
                Add(name, space, method.GetDeclaringType(), _reader.GetString(method.Name), count);
                named.Add(method.GetDeclaringType());
                break;
            case HandleKind.FieldDefinition:
                var field = _reader.GetFieldDefinition((FieldDefinitionHandle)handle);
                Add(name, space, field.GetDeclaringType(), _reader.GetString(field.Name), -1);
                named.Add(field.GetDeclaringType());
                break;
            default:
                AddType(named, handle, provider);
                break;
        }
    }

    private void AddType(List<EntityHandle> named, EntityHandle handle, NamedTypes provider)
    {
        if (handle.IsNil)
        {
            return;
        }

        if (handle.Kind == HandleKind.TypeSpecification)
        {
            // The provider that is handed in writes into its own list, which is this one or the type's.
            _reader.GetTypeSpecification((TypeSpecificationHandle)handle).DecodeSignature(provider, 0);
        }
        else if (handle.Kind is HandleKind.TypeReference or HandleKind.TypeDefinition)
        {
            named.Add(handle);
        }
    }

    private void Add(string name, string space, EntityHandle target, string member, int parameters)
    {
        var (to, toSpace, assembly) = target.Kind == HandleKind.TypeReference
            ? Outermost((TypeReferenceHandle)target)
            : Outermost((TypeDefinitionHandle)target) is var own ? (own.Name, own.Space, _name) : default;
        if (to != name)
        {
            _uses.Add(new TypeUse(name, space, to, toSpace, assembly, member, parameters));
        }
    }

    private (string Name, string Space) Outermost(TypeDefinitionHandle handle)
    {
        var type = _reader.GetTypeDefinition(handle);
        while (!type.GetDeclaringType().IsNil)
        {
            type = _reader.GetTypeDefinition(type.GetDeclaringType());
        }

        string space = _reader.GetString(type.Namespace);
        return (Full(space, _reader.GetString(type.Name)), space);
    }

    private (string Name, string Space, string Assembly) Outermost(TypeReferenceHandle handle)
    {
        var type = _reader.GetTypeReference(handle);
        while (type.ResolutionScope.Kind == HandleKind.TypeReference)
        {
            type = _reader.GetTypeReference((TypeReferenceHandle)type.ResolutionScope);
        }

        string space = _reader.GetString(type.Namespace);
        string assembly = type.ResolutionScope.Kind == HandleKind.AssemblyReference
            ? _reader.GetString(_reader.GetAssemblyReference((AssemblyReferenceHandle)type.ResolutionScope).Name)
            : _name;
        return (Full(space, _reader.GetString(type.Name)), space, assembly);
    }

    private static string Full(string space, string name) => space.Length == 0 ? name : $"{space}.{name}";
}
