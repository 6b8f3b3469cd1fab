#include "ui/words/phrase_words.h"

#include "ui/words/kept_words.h"
#include "ui/words/local_dates.h"
#include "ui/words/say.h"

#include <QRegularExpression>

namespace warmbench::ui {
namespace {

class Worded {
public:
    explicit Worded(const Wording& wording) : m_wording(wording) {}

    [[nodiscard]] QString operator()(const std::string& words) const { return asWritten(text(words)); }
    [[nodiscard]] QString operator()(std::int64_t number) const {
        return m_wording.locale().toString(static_cast<qlonglong>(number));
    }
    [[nodiscard]] QString operator()(Day day) const {
        return dayAndMonth(qDate(day), m_wording.locale(), true);
    }
    [[nodiscard]] QString operator()(Celsius temperature) const { return m_wording.temperature(temperature); }
    [[nodiscard]] QString operator()(const std::vector<Phrase>& phrases) const {
        QStringList all;
        for (const Phrase& one : phrases) all += phrase(one);
        return all.join(QStringLiteral(", "));
    }
    [[nodiscard]] QString phrase(const Phrase& one) const {
        const QString pattern = say(one.pattern().c_str());
        if (one.arguments().empty()) return asWritten(pattern);
        const std::string said =
            filledPattern(pattern.toStdString(), one.arguments().size(),
                          [&](std::size_t i) { return std::visit(*this, one.arguments()[i]).toStdString(); });
        return text(said);
    }

private:
    /// With dates, or a decimal number that is the whole of it, as the locale writes them.
    [[nodiscard]] QString asWritten(QString words) const {
        static const QRegularExpression decimal(QStringLiteral("^-?\\d+\\.\\d+$"));
        if (decimal.match(words).hasMatch()) return words.replace(u'.', m_wording.locale().decimalPoint());
        return withLocalDates(words, m_wording.locale());
    }

    const Wording& m_wording;
};

} // namespace

QString told(const Phrase& phrase, const Wording& wording) {
    if (phrase.empty()) return {};
    // What was put together where it arose is read back.
    return Worded(wording).phrase(phrase.arguments().empty() ? readKeptWords(phrase.pattern()) : phrase);
}

QString told(const Refusal& refusal, const Wording& wording) {
    const QString what = told(refusal.what, wording);
    return refusal.place.empty() ? what : told(refusal.place, wording) + QStringLiteral(": ") + what;
}

QString told(const std::string& words, const Wording& wording) {
    return told(Phrase(words), wording);
}

} // namespace warmbench::ui
