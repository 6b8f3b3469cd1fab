#include "core/exchange/json/reader.h"

#include "core/exchange/json/number.h"
#include "core/exchange/json/text.h"
#include "core/quantity/decimal.h"

#include <algorithm>
#include <unordered_set>

namespace warmbench::json {
namespace {

/// An object with so many unknown fields is refused for the first of them, without looking for keys that
/// stand twice among the rest.
constexpr std::size_t mostUnknown = 1000;

std::string faultText(Decimal::Fault fault, int places) {
    switch (fault) {
    case Decimal::Fault::NotFinite:
        return "a finite number";
    case Decimal::Fault::TooLarge:
        return "a number below 1e12";
    case Decimal::Fault::TooManyDecimals:
        break;
    }
    return places == 0 ? "a whole number" : "at most " + std::to_string(places) + " decimals";
}

std::string countText(std::size_t least, std::size_t most) {
    if (most == std::numeric_limits<std::size_t>::max()) return "at least " + std::to_string(least);
    if (least == most) return std::to_string(least);
    return std::to_string(least) + " to " + std::to_string(most);
}

std::string listed(Keys required, Keys optional) {
    std::string text;
    for (const Keys keys : {required, optional})
        for (const std::string_view key : keys) text += (text.empty() ? "" : ", ") + std::string(key);
    return text;
}

std::size_t childCount(Value container) {
    Children children{container};
    std::size_t count = 0;
    while (children.next()) ++count;
    return count;
}

} // namespace

std::optional<Value> Fields::find(std::string_view key) const {
    for (const auto& [name, value] : m_fields)
        if (name == key) return value;
    return std::nullopt;
}

void Reader::refuse(const Pointer& at, std::string what) {
    if (!failed()) m_refusal = Refusal{at.text(), std::move(what)};
}

bool Reader::expect(Kind kind, Value value, const Pointer& at, const char* expected) {
    if (failed()) return false;
    if (value.kind() == kind) return true;
    refuse(at, "found " + shown(value) + ", expected " + expected);
    return false;
}

Fields Reader::object(Value value, const Pointer& at, Keys required, Keys optional) {
    Fields fields;
    if (!expect(Kind::Object, value, at, "an object")) return fields;
    const auto known = [&](const std::string& key) -> const std::string_view* {
        for (const Keys names : {required, optional})
            for (const std::string_view& name : names)
                if (name == key) return &name;
        return nullptr;
    };
    std::unordered_set<std::string> unknown;
    std::string firstUnknown;
    Children members{value};
    while (const auto member = members.next()) {
        const std::string key = members.key();
        const std::string_view* name = known(key);
        if (name ? fields.has(key) : !unknown.insert(key).second) {
            refuse(at / key, "the key stands twice, expected once");
            return {};
        }
        if (name)
            fields.m_fields.emplace_back(*name, *member);
        else if (unknown.size() == 1)
            firstUnknown = key;
        if (unknown.size() == mostUnknown) break;
    }
    if (!unknown.empty())
        refuse(at / firstUnknown, "unknown field, expected one of " + listed(required, optional));
    for (const std::string_view name : required)
        if (!fields.has(name)) refuse(at / name, "missing, expected a value");
    return failed() ? Fields{} : fields;
}

Children Reader::list(Value value, const Pointer& at, std::size_t least, std::size_t most) {
    if (!expect(Kind::List, value, at, "a list")) return {};
    if (least > 0 || most < std::numeric_limits<std::size_t>::max()) {
        const std::size_t count = childCount(value);
        if (count < least || count > most) {
            refuse(at, "found " + std::to_string(count) + " entries, expected " + countText(least, most));
            return {};
        }
    }
    return Children{value};
}

std::int64_t Reader::count(Value value, const Pointer& at, int places, Parts (Decimal::*parts)(int) const) {
    if (!expect(Kind::Number, value, at, "a number")) return 0;
    const auto decimal = Decimal::read(value.source());
    const Parts found = decimal ? ((*decimal).*parts)(places) : Decimal::Fault::NotFinite;
    if (const auto* fault = std::get_if<Decimal::Fault>(&found)) {
        refuse(at, "found " + shown(value) + ", expected " + faultText(*fault, places));
        return 0;
    }
    return std::get<std::int64_t>(found);
}

std::int64_t Reader::number(Value value, const Pointer& at, int places, Bounds bounds) {
    const std::int64_t found = count(value, at, places, &Decimal::parts);
    if (found < bounds.least)
        refuse(at, "found " + shown(value) + ", expected at least " + decimalText(bounds.least, places));
    if (found > bounds.most)
        refuse(at, "found " + shown(value) + ", expected at most " + decimalText(bounds.most, places));
    return found;
}

std::string Reader::string(Value value, const Pointer& at) {
    return expect(Kind::String, value, at, "a text") ? value.string() : std::string{};
}

std::int64_t Reader::numberRoundedDown(Value value, const Pointer& at, int places) {
    return count(value, at, places, &Decimal::partsRoundedDown);
}

std::string Reader::name(Value value, const Pointer& at) {
    if (!expect(Kind::String, value, at, "a name")) return {};
    std::string text = value.string();
    if (text.empty()) refuse(at, "found \"\", expected a name");
    return text;
}

bool Reader::boolean(Value value, const Pointer& at) {
    return expect(Kind::Boolean, value, at, "true or false") && value.isTrue();
}

} // namespace warmbench::json
