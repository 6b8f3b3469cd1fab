#include "core/exchange/book/recipe_change.h"

#include "core/exchange/book/field_reader.h"

namespace warmbench {
namespace {

std::string trimmed(std::string_view text) {
    const auto first = text.find_first_not_of(' ');
    if (first == std::string_view::npos) return {};
    return std::string(text.substr(first, text.find_last_not_of(' ') - first + 1));
}

std::vector<std::string> parts(const std::string& text, char between) {
    std::vector<std::string> found;
    std::size_t from = 0;
    while (true) {
        const std::size_t to = text.find(between, from);
        found.push_back(trimmed(std::string_view(text).substr(from, to - from)));
        if (to == std::string::npos) return found;
        from = to + 1;
    }
}

/// `A to B` as an object with these two members, each written by `write`; the text itself where it is none.
template <class Write>
std::string span(const std::string& text, const char* first, const char* last, Write write) {
    const std::size_t to = text.find(" to ");
    if (to == std::string::npos) return json::inQuotes(text);
    return "{" + json::inQuotes(first) + ":" + write(trimmed(text.substr(0, to))) + "," +
           json::inQuotes(last) + ":" + write(trimmed(text.substr(to + 4))) + "}";
}

/// A value of a figure, as a person writes it, in JSON.
template <class T>
struct Written {
    static std::string json(const std::string& text) {
        return json::parse(text) ? text : json::inQuotes(text);
    }
};
template <>
struct Written<std::string> {
    static std::string json(const std::string& text) { return json::inQuotes(text); }
};
template <>
struct Written<bool> {
    static std::string json(const std::string& text) {
        if (text == "yes") return "true";
        if (text == "no") return "false";
        return json::inQuotes(text);
    }
};
template <>
struct Written<std::optional<int>> {
    static std::string json(const std::string& text) {
        return text == "none" ? "null" : Written<int>::json(text);
    }
};
template <>
struct Written<IntRange> {
    static std::string json(const std::string& text) { return span(text, "low", "high", Written<int>::json); }
};
template <>
struct Written<Season> {
    static std::string json(const std::string& text) {
        return span(text, "from", "to", Written<std::string>::json);
    }
};
template <>
struct Written<std::vector<Cover>> {
    static std::string json(const std::string& text) {
        std::string list;
        for (const std::string& cover : parts(text, ','))
            list += (list.empty() ? "" : ",") + json::inQuotes(cover);
        return "[" + list + "]";
    }
};
template <>
struct Written<std::vector<MediumComponent>> {
    static std::string json(const std::string& text) {
        std::string list;
        for (const std::string& component : parts(text, ',')) {
            const std::size_t gap = component.find(' ');
            if (gap == std::string::npos) return json::inQuotes(text);
            list += std::string(list.empty() ? "" : ",") + R"({"parts":)" +
                    Written<int>::json(component.substr(0, gap)) + R"(,"name":)" +
                    json::inQuotes(trimmed(component.substr(gap))) + "}";
        }
        return "[" + list + "]";
    }
};

template <class T>
Outcome readValue(const std::string& text, T& value) {
    const std::string written = Written<T>::json(trimmed(text));
    const auto parsed = json::parse(written);
    if (!parsed) return parsed.refusal();
    json::Reader reader;
    FieldReader(reader).read(*parsed, {}, value);
    return reader.refusal();
}

} // namespace

std::vector<std::string> recipeFigureNames() {
    std::vector<std::string> names;
    Recipe recipe;
    describe(recipe, [&]<class Field>(const char* name, Field&) {
        if constexpr (IsFigure<Field>) names.emplace_back(name);
    });
    return names;
}

Result<Recipe> withOwnFigure(Recipe recipe, const std::string& figure, const std::string& value) {
    bool known = false;
    Outcome refusal;
    describe(recipe, [&]<class Field>(const char* name, Field& field) {
        if constexpr (IsFigure<Field>) {
            if (figure != name) return;
            known = true;
            refusal = readValue(value, field.value);
            field.source = ownFigure;
        }
    });
    if (!known) {
        std::string names;
        for (const std::string& name : recipeFigureNames()) names += (names.empty() ? "" : ", ") + name;
        return Refusal{figure, phrase("no figure of a recipe, expected one of %1", names)};
    }
    if (refusal) return Refusal{figure, refusal->what};
    return recipe;
}

} // namespace warmbench
