#include "core/book/field_rules.h"

#include "core/quantity/utf8.h"

#include <algorithm>

namespace warmbench {
namespace {

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
    void refuse(const Phrase& what) {
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
        if (size > most || size < -most) refuseField(phrase("a number beyond %1", largestNumber).text());
    }
    template <class Tag>
    void check(Id<Tag> id) {
        if (id.number < 1 || id.number > largestId)
            refuseField(phrase("number %1; expected 1 to %2", id.number, largestId).text());
    }
    void check(const std::string& text) {
        if (auto fault = textFault(text)) refuseField(*fault);
    }
    void check(Day day) {
        if (day < Day::first() || day > Day::last())
            refuseField(pattern("a day outside the years 1 to 9999"));
    }
    void check(MonthDay day) {
        if (!Day::make(2000, day.month, day.day)) refuseField(pattern("a day that no year has"));
    }
    template <class Word>
    requires std::is_enum_v<Word>
    void check(Word word) {
        if (static_cast<std::size_t>(word) >= EnumWords<Word>::words.size())
            refuseField(pattern("an unknown word"));
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
            refuseField(phrase("%1 entries; expected at most %2", values.size(), longestList).text());
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
                    refuse(phrase("its %1, number %2, is not in this book", Phrase(kindName<Kind>.one),
                                  id.number));
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
        return phrase("%1 bytes of text; expected at most %2", text.size(), longestText).text();
    while (!text.empty()) {
        const std::size_t length = utf8Length(text);
        if (length == 0) return pattern("a character that is not UTF-8");
        const auto c = static_cast<unsigned char>(text.front());
        if ((c < ' ' && c != '\n' && c != '\r' && c != '\t') || c == 0x7F)
            return pattern("a control character");
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
template Outcome checkFields(const HouseBook&, const ReadingMonth&);

} // namespace warmbench
