// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/units/notes.h"

#include <cmath>

#include "core/units/translate.h"
#include "tests/support/registry.h"

using namespace howlmap;

namespace {
struct Known {
    int semitone;
    const char* name;
    double hz;
};

// Equal temperament with A4 = 440 Hz (ISO 16:1975), 440 * 2^((m - 69) / 12) to 6 digits, A0 .. C8.
const Known kNotes[] = {
    {21, "A0", 27.5},       {22, "A#0", 29.1352},    {23, "B0", 30.8677},    {24, "C1", 32.7032},
    {25, "C#1", 34.6478},   {26, "D1", 36.7081},     {27, "D#1", 38.8909},   {28, "E1", 41.2034},
    {29, "F1", 43.6535},    {30, "F#1", 46.2493},    {31, "G1", 48.9994},    {32, "G#1", 51.9131},
    {33, "A1", 55.0},       {34, "A#1", 58.2705},    {35, "B1", 61.7354},    {36, "C2", 65.4064},
    {37, "C#2", 69.2957},   {38, "D2", 73.4162},     {39, "D#2", 77.7817},   {40, "E2", 82.4069},
    {41, "F2", 87.3071},    {42, "F#2", 92.4986},    {43, "G2", 97.9989},    {44, "G#2", 103.8262},
    {45, "A2", 110.0},      {46, "A#2", 116.5409},   {47, "B2", 123.4708},   {48, "C3", 130.8128},
    {49, "C#3", 138.5913},  {50, "D3", 146.8324},    {51, "D#3", 155.5635},  {52, "E3", 164.8138},
    {53, "F3", 174.6141},   {54, "F#3", 184.9972},   {55, "G3", 195.9977},   {56, "G#3", 207.6523},
    {57, "A3", 220.0},      {58, "A#3", 233.0819},   {59, "B3", 246.9417},   {60, "C4", 261.6256},
    {61, "C#4", 277.1826},  {62, "D4", 293.6648},    {63, "D#4", 311.127},   {64, "E4", 329.6276},
    {65, "F4", 349.2282},   {66, "F#4", 369.9944},   {67, "G4", 391.9954},   {68, "G#4", 415.3047},
    {69, "A4", 440.0},      {70, "A#4", 466.1638},   {71, "B4", 493.8833},   {72, "C5", 523.2511},
    {73, "C#5", 554.3653},  {74, "D5", 587.3295},    {75, "D#5", 622.254},   {76, "E5", 659.2551},
    {77, "F5", 698.4565},   {78, "F#5", 739.9888},   {79, "G5", 783.9909},   {80, "G#5", 830.6094},
    {81, "A5", 880.0},      {82, "A#5", 932.3275},   {83, "B5", 987.7666},   {84, "C6", 1046.5023},
    {85, "C#6", 1108.7305}, {86, "D6", 1174.6591},   {87, "D#6", 1244.5079}, {88, "E6", 1318.5102},
    {89, "F6", 1396.9129},  {90, "F#6", 1479.9777},  {91, "G6", 1567.9817},  {92, "G#6", 1661.2188},
    {93, "A6", 1760.0},     {94, "A#6", 1864.655},   {95, "B6", 1975.5332},  {96, "C7", 2093.0045},
    {97, "C#7", 2217.461},  {98, "D7", 2349.3181},   {99, "D#7", 2489.0159}, {100, "E7", 2637.0205},
    {101, "F7", 2793.8259}, {102, "F#7", 2959.9554}, {103, "G7", 3135.9635}, {104, "G#7", 3322.4376},
    {105, "A7", 3520.0},    {106, "A#7", 3729.3101}, {107, "B7", 3951.0664}, {108, "C8", 4186.009},
};
}  // namespace

class TestNotes : public QObject {
    Q_OBJECT
  private Q_SLOTS:
    void frequenciesAndNames() {
        for (const Known& known : kNotes) {
            QVERIFY(std::abs(semitone_hz(known.semitone) / known.hz - 1.0) < 5e-6);
            const Note note = note_of(known.hz);
            QCOMPARE(note.name, std::string(known.name));
            QVERIFY(std::abs(note.cents) < 0.01);
        }
    }

    void centsOnBothSides() {
        // 100 cents a semitone: 10 cents above A4 is 440 * 2^(10/1200) = 442.549 Hz.
        QVERIFY(std::abs(note_of(442.54893).cents - 10.0) < 1e-3);
        QCOMPARE(note_of(442.54893).name, std::string("A4"));
        QVERIFY(std::abs(note_of(440.0 * std::exp2(-49.0 / 1200.0)).cents + 49.0) < 1e-9);
        QCOMPARE(note_of(440.0 * std::exp2(51.0 / 1200.0)).name, std::string("A#4"));
    }

    void namesOfTheUsersLanguage() {
        // German calls B "H" and a sharp "is" (handbook tables, from memory); machines read the same name everywhere.
        set_translator([](const char*, const char* english) {
            const std::string name = english;
            return name == "B" ? std::string("H") : name == "D#" ? std::string("Dis") : name;
        });
        const std::string b = note_of(61.7354).name, d_sharp = note_of(155.5635).name,
                          machine = international_note(155.5635);
        set_translator({});
        QCOMPARE(b, std::string("H1"));
        QCOMPARE(d_sharp, std::string("Dis3"));
        QCOMPARE(machine, std::string("D#3"));
    }

    void theEndsOfHearing() {
        QCOMPARE(note_of(20.0).name, std::string("D#0"));      // 19.445 Hz
        QCOMPARE(note_of(20000.0).name, std::string("D#10"));  // 19912.1 Hz
        QCOMPARE(note_of(8.1757989).name, std::string("C-1"));
    }
};

HOWLMAP_TEST(TestNotes)
#include "test_notes.moc"
