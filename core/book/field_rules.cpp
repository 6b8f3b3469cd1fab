#include "core/book/field_rules.h"

#include <algorithm>

namespace warmbench {
namespace {

/// Length of the UTF-8 character at the front of `text`, 0 where there is none (table 3-7 of the Unicode
/// Standard: no surrogates, no overlong forms).
std::size_t characterLength(std::string_view text) {
    const auto byte = [&](std::size_t i) {
        return i < text.size() ? static_cast<unsigned char>(text[i]) : static_cast<unsigned char>(0);
    };
    const auto follow = [&](std::size_t last) {
        for (std::size_t i = 2; i <= last; ++i)
            if ((byte(i) & 0xC0) != 0x80) return false;
        return true;
    };
    const unsigned first = byte(0);
    const unsigned second = byte(1);
    if (first < 0x80) return 1;
    if (first < 0xC2 || first > 0xF4) return 0;
    const unsigned least = first == 0xE0 ? 0xA0 : first == 0xF0 ? 0x90 : 0x80;
    const unsigned most = first == 0xED ? 0x9F : first == 0xF4 ? 0x8F : 0xBF;
    if (second < least || second > most) return 0;
    const std::size_t length = first < 0xE0 ? 2 : first < 0xF0 ? 3 : 4;
    return follow(length - 1) ? length : 0;
}

std::string inWords(std::string_view fieldName) {
    std::string words(fieldName);
    std::replace(words.begin(), words.end(), '_', ' ');
    return words;
}

/// Visits the fields of one thing and keeps the first fault.
template <class E>
class FieldRules {
public:
    FieldRules(const HouseBook& book, const E& thing) : m_book(book), m_thing(thing) {}

    Outcome run() {
        describe(m_thing, [&](const char* name, const auto& value) {
            m_field = name;
            check(value);
            checkReference(value);
        });
        return m_refusal;
    }

private:
    void refuse(const std::string& what) {
        if (!m_refusal) m_refusal = Refusal{plainName(m_thing), what};
    }
    void refuseField(const std::string& what) { refuse(inWords(m_field) + ": " + what); }

    void check(bool) {}
    void check(int number) { checkSize(number, largestNumber); }
    template <class Tag, std::int64_t PerUnit>
    void check(Amount<Tag, PerUnit> amount) {
        checkSize(amount.parts, largestNumber * PerUnit);
    }
    void checkSize(std::int64_t size, std::int64_t most) {
        if (size > most || size < -most) refuseField("a number beyond " + std::to_string(largestNumber));
    }
    template <class Tag>
    void check(Id<Tag> id) {
        if (id.number < 1 || id.number > largestId)
            refuseField("number " + std::to_string(id.number) + "; expected 1 to " +
                        std::to_string(largestId));
    }
    void check(const std::string& text) {
        if (auto fault = textFault(text)) refuseField(*fault);
    }
    void check(Day day) {
        if (day < Day::first() || day > Day::last()) refuseField("a day outside the years 1 to 9999");
    }
    void check(MonthDay day) {
        if (!Day::make(2000, day.month, day.day)) refuseField("a day that no year has");
    }
    template <class Word>
        requires std::is_enum_v<Word>
    void check(Word word) {
        if (static_cast<std::size_t>(word) >= EnumWords<Word>::words.size()) refuseField("an unknown word");
    }
    template <class T>
    void check(const std::optional<T>& value) {
        if (value) check(*value);
    }
    template <class T, std::size_t N>
    void check(const std::array<T, N>& values) {
        for (const T& value : values) check(value);
    }
    template <class T>
    void check(const std::vector<T>& values) {
        if (values.size() > longestList)
            refuseField(std::to_string(values.size()) + " entries; expected at most " +
                        std::to_string(longestList));
        for (const T& value : values) check(value);
    }
    template <Described T>
    void check(const T& parts) {
        describe(parts, [&](const char*, const auto& part) { check(part); });
    }

    void checkReference(IdOf<E>) {} // its own
    template <class Tag>
    void checkReference(Id<Tag> id) {
        forEachKind([&]<class Kind>() {
            if constexpr (std::is_same_v<IdOf<Kind>, Id<Tag>>)
                if (!m_book.find<Kind>(id))
                    refuse(std::string("its ") + kindName<Kind>.one + ", number " +
                           std::to_string(id.number) + ", is not in this book");
        });
    }
    template <class Tag>
    void checkReference(const std::optional<Id<Tag>>& id) {
        if (id) checkReference(*id);
    }
    template <class T>
    void checkReference(const T&) {}

    const HouseBook& m_book;
    const E& m_thing;
    const char* m_field = "";
    Outcome m_refusal;
};

} // namespace

std::optional<std::string> textFault(std::string_view text) {
    if (text.size() > longestText)
        return std::to_string(text.size()) + " bytes of text; expected at most " +
               std::to_string(longestText);
    while (!text.empty()) {
        const std::size_t length = characterLength(text);
        if (length == 0) return "a character that is not UTF-8";
        const auto c = static_cast<unsigned char>(text.front());
        if ((c < ' ' && c != '\n' && c != '\r' && c != '\t') || c == 0x7F) return "a control character";
        text.remove_prefix(length);
    }
    return std::nullopt;
}

template <class E>
Outcome checkFields(const HouseBook& book, const E& thing) {
    return FieldRules<E>(book, thing).run();
}

template Outcome checkFields(const HouseBook&, const Nursery&);
template Outcome checkFields(const HouseBook&, const HandDay&);
template Outcome checkFields(const HouseBook&, const House&);
template Outcome checkFields(const HouseBook&, const Bench&);
template Outcome checkFields(const HouseBook&, const Zone&);
template Outcome checkFields(const HouseBook&, const MatRun&);
template Outcome checkFields(const HouseBook&, const ContainerType&);
template Outcome checkFields(const HouseBook&, const Medium&);
template Outcome checkFields(const HouseBook&, const Taxon&);
template Outcome checkFields(const HouseBook&, const Recipe&);
template Outcome checkFields(const HouseBook&, const Stock&);
template Outcome checkFields(const HouseBook&, const Target&);
template Outcome checkFields(const HouseBook&, const Batch&);
template Outcome checkFields(const HouseBook&, const Stay&);
template Outcome checkFields(const HouseBook&, const RootCheck&);
template Outcome checkFields(const HouseBook&, const Potting&);
template Outcome checkFields(const HouseBook&, const Loss&);

} // namespace warmbench
