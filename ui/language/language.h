#pragma once

#include <QLocale>
#include <QString>
#include <QStringList>

#include <memory>

class QTranslator;

namespace warmbench::ui {

/// The language in which the program speaks: English as it stands in the source, or one of
/// resources/translation. Dates and numbers go with it.
class Language {
public:
    /// Under which the choice is kept among the window's settings.
    static inline const QString key = QStringLiteral("language");

    Language();
    ~Language();
    Language(const Language&) = delete;
    Language& operator=(const Language&) = delete;

    /// `en`, `de`: those that there are.
    [[nodiscard]] static QStringList codes();
    /// A language's name in itself, `Deutsch`.
    [[nodiscard]] static QString ownName(const QString& code);
    /// The code of what is spoken where `chosen` was chosen, or nothing (empty, or none that there is), on a
    /// desktop with this locale.
    [[nodiscard]] static QString spoken(const QString& chosen, const QLocale& desktop);

    /// Speaks it from now on. What stands in a window already stays as it is: the window is made anew.
    void use(const QString& chosen, const QLocale& desktop = QLocale::system());

private:
    std::unique_ptr<QTranslator> m_own;
    std::unique_ptr<QTranslator> m_qt; ///< buttons of dialogs and the like, as Qt words them
};

} // namespace warmbench::ui
