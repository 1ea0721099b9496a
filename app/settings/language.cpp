// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/settings/language.h"

#include <QCoreApplication>
#include <QLibraryInfo>
#include <QTranslator>

#include "core/units/translate.h"

namespace howlmap::app {
namespace {

/// Texts outside any class are collected under the name of the namespace, wherever they are asked for.
class Texts : public QTranslator {
  public:
    using QTranslator::QTranslator;
    QString translate(const char* context, const char* text, const char* meaning, int count) const override {
        const QString found = QTranslator::translate(context, text, meaning, count);
        return found.isEmpty() ? QTranslator::translate("howlmap::app", text, meaning, count) : found;
    }
};

void install(QTranslator* translator, const QLocale& locale, const QString& name, const QString& folder) {
    if (translator->load(locale, name, QStringLiteral("_"), folder)) QCoreApplication::installTranslator(translator);
}

}  // namespace

void speak(const QLocale& locale) {
    // The figures of core are of Latin digits, and so is their mark.
    const char mark = locale.decimalPoint().at(0).toLatin1();
    set_decimal_mark(mark == ',' ? mark : '.');
    // Should a language be asked for that is English or unknown, the texts of the source are it.
    if (locale.language() == QLocale::English || locale.language() == QLocale::C) return;
    auto* const application = QCoreApplication::instance();
    install(new QTranslator(application), locale, QStringLiteral("qtbase"),
            QLibraryInfo::path(QLibraryInfo::TranslationsPath));
    install(new Texts(application), locale, QStringLiteral("howlmap"), QStringLiteral(":/i18n"));
    set_translator([](const char* context, const char* english) {
        return QCoreApplication::translate(context, english).toStdString();
    });
}

}  // namespace howlmap::app
