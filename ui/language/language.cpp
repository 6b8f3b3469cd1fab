#include "ui/language/language.h"

#include <QCoreApplication>
#include <QLibraryInfo>
#include <QTranslator>

namespace warmbench::ui {
namespace {

/// All texts stand in one context of the file, whichever class says them.
class OneContext : public QTranslator {
public:
    [[nodiscard]] QString translate(const char* /*context*/, const char* source, const char* which,
                                    int count) const override {
        return QTranslator::translate("Warmbench", source, which, count);
    }
};

} // namespace

Language::Language() = default;

Language::~Language() = default;

QStringList Language::codes() {
    return {QStringLiteral("en"), QStringLiteral("de")};
}

QString Language::ownName(const QString& code) {
    return code == QLatin1String("de") ? QStringLiteral("Deutsch") : QStringLiteral("English");
}

QString Language::spoken(const QString& chosen, const QLocale& desktop) {
    if (codes().contains(chosen)) return chosen;
    // The first of the desktop's languages that there is; `de-AT` counts as `de`.
    for (const QString& wished : desktop.uiLanguages())
        if (const QString code = wished.section(u'-', 0, 0); codes().contains(code)) return code;
    return codes().front();
}

void Language::use(const QString& chosen, const QLocale& desktop) {
    const QString code = spoken(chosen, desktop);
    m_own.reset();
    m_qt.reset();
    const QLocale inIt(QLocale(code).language(), desktop.territory());
    const bool asDesktop = chosen.isEmpty() || desktop.language() == inIt.language();
    QLocale::setDefault(asDesktop ? desktop : inIt);
    if (code == codes().front()) return;
    m_own = std::make_unique<OneContext>();
    if (m_own->load(QStringLiteral(":/translation/warmbench_") + code))
        QCoreApplication::installTranslator(m_own.get());
    m_qt = std::make_unique<QTranslator>();
    if (m_qt->load(QStringLiteral("qtbase_") + code, QLibraryInfo::path(QLibraryInfo::TranslationsPath)))
        QCoreApplication::installTranslator(m_qt.get());
}

} // namespace warmbench::ui
