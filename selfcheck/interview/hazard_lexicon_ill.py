"""Words for what gas and hurts do to a person, and for calls for help.

How the words are marked stands in `hazard_lexicon.py`. Data with no logic.
"""

from __future__ import annotations

ILL: dict[str, str] = {
    "ill": (
        "had_stroke had_a_stroke going_to_be_sick going_to_be_ill gas_poisoning dizzy dizziness dizy woozy "
        "light_headed lightheadedness "
        "light_head queasy nauseous nauseated nausious fainty mareado mareada vertigo disoriented disorientated "
        "threw_up vomitando dry_heaving past_out blackout knocked_out unconscious unresponsive lost_consciousness "
        "losing_consciousness out_cold desmayo desmaye desmayado desmayada desmayando inconsciente seizing no_pulse "
        "can_not_feel_pulse seeing_stars seeing_double seeing_spots see_spots see_stars see_double blurry_vision "
        "tight_chest chest_tight chest_hurts chest_pain chest_pains chest_is_tight chest_feels_tight pain_in_chest "
        "pain_in_my_chest heart_racing heart_pounding heart_is_racing heart_is_pounding heart_attack short_breath "
        "short_of_breath shortness_breath shortness_of_breath breathless gasping choking chokin asphyxiat* "
        "electrocution room_is_spinning everything_is_spinning world_is_spinning everything_spinning head_spinning "
        "head_is_spinning head_swimming head_pounding head_is_pounding got_the_spins the_spins spinning_head "
        "dying_here lips_are_blue lips_blue went_limp gone_limp is_limp goes_limp convulsing foaming slurring_words "
        "need_a_doctor need_doctor need_medic gassed in_a_daze out_like going_numb tunnel_vision no_respira giddy "
        "giddiness muzzy zonked_out zonked knocked_unconscious spaced_out zoning_out hallucinating delirious "
        "incoherent reeling staggering dry_heaves upchuck* heaving chundered lost_lunch lost_breakfast sick_as "
        "green_around poorly took_a_turn taken_ill taken_bad came_over_funny come_over_funny gone_funny out_of_sorts "
        "not_with_it not_all_there in_and_out_of_it fading_fast eyes_rolled_back rolled_back_eyes turned_purple "
        "no_heartbeat not_rousable out_for_the_count down_for_the_count out_for_count down_for_count faceplant* "
        "face_planted spark_out twitching having_a_fit having_fit having_a_stroke having_stroke heart_stopped cpr "
        "mouth_to_mouth doing_chest_compressions everything_is_going everything_going_dark "
        "everything_everything_going_gray everything_went_dark everything_went_black everything_is_blurry "
        "everything_looks_blurry everything_is_fuzzy everything_is_dark everything_is_fading everything_getting_dark "
        "everything_is_getting_dark going_black went_white going_grey going_gray vision_going vision_is_going "
        "brain_fog mind_is_fuzzy off_balance lost_balance_and unsteady_on_feet dizzyness woosh_in_head fallen_ill "
        "keeling dropped_dead gagging_and gag_reflex room_spinning room_spins ground_is_spinning world_spinning "
        "stars_in_eyes black_spots spots_in_eyes spots_in_front swaying sea_sick seasick carsick car_sick feel_unwell "
        "gasped_for wheezing_and knees_buckled legs_went_out legs_gave_out legs_gave_way gone_white white_as "
        "white_as_sheet pale_as palpitations cold_sweat cold_sweats breaking_out_in_sweat carbon_monoxide_poisoning "
        "monoxide_poisoning violently_ill gonna_hurl going_to_hurl going_to_puke going_to_barf about_to_puke up_chuck "
        "blacking_in lights_went_out_for greyed_out passed_clean_out zapped_of vomit~ pass~_out keel~_over puke~ barf~ "
        "hurl~ swoon~ throw~_up black~_out toss~_cookies retch~ nausea~ seizure~ conk~_out chuck~_up gray~_out "
        "lighthead~ suffocate~ turn~_blue hyperventilate~ mareo mareos fell_sick fell_ill fell_weak fell_faint "
        "fell_dizzy fell_funny fell_weird fell_strange fell_woozy fell_bad pins_and_needles pins_needles blow~_chunks "
        "lose~_lunch losing_lunch blow~_groceries chunder~ wobbly_on unsteady_on shaky_on lights_are_going_out "
        "lights_going_out lights_are_out_for twitch~ stagger~ choke~ gasp~ hallucinate~ convulse~ dry_heave~"
    ),
    "ache": (
        "headache headaches headach hedache headake migraine dolor_de_cabeza duele_la_cabeza cabeza_me_duele "
        "duele_mucho_la_cabeza cabeza_duele"
    ),
    "head": "head",
    "hurt": (
        "turning turns turned swimmy full_of_cotton like_cotton cottony killing splitting exploding swirling funny "
        "weird heavy light foggy cracking banging busting bursting thumping hammering ringing buzzing woozy cotton "
        "fuzzy mush mushy floaty muzzy thick sore bleeding bloody cloudy spacey hurt~ ache~ pound~ throb~ spin~ swim~"
    ),
    "feel": "feel feels feeling felt feelin siento siente sintiendo",
    "weak": (
        "queer drugged doped swimmy like_cotton cottony full_of_cotton funny weird wierd strange odd off rough "
        "terrible awful horrible bad drunk lousy crappy crap shit death clammy dying sick ill weak shaky drowsy sleepy "
        "spacey loopy poisoned out_of_it not_right mal enfermo enferma foggy floaty confused tired_and_foggy unwell "
        "hot_and_cold numb wobbly tingly groggy high heavy_headed dazed pale sick_stomach sick_to_my_stomach stoned "
        "light hot_and yucky icky rotten grim ropey ropy iffy manky nasty wiped wiped_out wrecked hungover tipsy "
        "buzzed loaded out_of_sorts seedy peaky floppy trembly jittery jelly rubbery spinny spaced spaced_out zoned "
        "delirious slow fuzzy cloudy muddled dopey dopy achy feverish chilly_and breathless dizzy half_asleep_all "
        "stupid punch_drunk punchy giddy crook bleh blah ugh green rubber heavy_legs jello like_passing like_fainting "
        "like_throwing like_puking like_i_am_going_to_be_sick like_dying like_collapsing not_myself like_jelly "
        "like_rubber like_death like_crap like_shit like_i_am_floating strangely numbness squiffy been_drinking "
        "have_been_drinking had_a_few like_a_zombie"
    ),
    "unwell": (
        "not_well_from not_well_after feel_unwell feels_unwell feeling_unwell sick_to_my_stomach sick_feeling "
        "sick_to_stomach my_stomach_is_turning stomach_turning"
    ),
    "state": (
        "sick ill unwell weak woozy shaky wobbly out_of_it confused drowsy sleepy groggy loopy spacey foggy poisoned "
        "overcome pale grey gray blue white clammy numb short_of_breath slurring gagging coughing_bad coughing_badly "
        "coughing_hard coughing_blood coughing_a_lot drunk disoriented wobbling swaying strange weird staggering "
        "talking_nonsense not_making_sense making_no_sense funny nauseous green hurt_bad bleeding bleeding_badly "
        "delirious incoherent dazed dopey muddled fuzzy faint gray_in_face white_as limp lifeless motionless purple "
        "blue_in_face cold_and_clammy shivering shaking trembling twitching crook peaky poorly punch_drunk out_cold "
        "knocked_out rubbery slurring_words slurring_speech babbling not_right not_himself not_herself not_with_it "
        "glassy_eyed gasping sweaty_and hysterical stumbling unsteady dead zonked shiver~ tremble~ shake~ twitch~ "
        "stagger~ stumble~ sway~ wobble~ babble~ slur~ gag~ bleed~ gasp~ mumble~ mumbling"
    ),
    "look": (
        "got went gone going felt is are am was were be talking walking looking_really came act~ look~ get~ seem~ "
        "turn~ feel~ come~ sound~ become~"
    ),
    "senses": (
        "lips hands fingers face feet arms legs vision eyes throat lungs ears eye chest stomach tummy belly guts gut "
        "insides knees tongue mouth nose skin ear balance speech sinuses windpipe airway heart sight eyesight toes"
    ),
    "sense_hurt": (
        "closing ringing tight blurry blurred fuzzy going blue tingling tingly numb weak wobbly jelly giving_out "
        "gave_out gave aching racing fluttering hammering churning upset queasy lurching heaving flipping in_knots "
        "rubber rubbery shaky shaking trembling twitching buzzing closed_up squeezing hazy fading narrowing mush "
        "swelling swollen raw scratchy purple like_jelly like_rubber like_lead like_noodles wont_work not_working "
        "bleeding gone_numb going_numb noodles jello feel_heavy tearing_up watering streaming burn~ sting~ dim~ turn~ "
        "slur~ cramp~ buckle~ tighten~ roll~_back rolling rolled roll~ tingle~ race~ flutter~ hammer~ churn~ lurch~ "
        "tremble~ twitch~ buzz~ squeeze~ fade~ narrow~ swell~ bleed~"
    ),
    "breath": "breathe breathing breath breaths air respirar respira breathin",
    "no_breath": (
        "can_not could_not hardly barely hard trouble difficulty struggling struggle struggles hard_time unable "
        "not_able stopped stop no_puedo having_trouble cant_catch shallow quit scarcely difficult heavy gasp gasping "
        "gasps fighting fight battling can_hardly stops stopping labored laboured ragged rasping quitting lost losing "
        "cannot struggled catch_my can_not_get could_not_get can_not_seem not_get_enough not_enough not_getting "
        "can_not_draw can_not_take"
    ),
    "no_answer": (
        "stop~_answering stop~_replying hard_to_stay hard_to_keep_my hard_to_keep_eyes stopped_replying "
        "stopped_calling not_answering_us no_reply no_longer_answers not_call_back not_shout_back quit_answering "
        "can_not_focus not_responsive no_breathing not_awake no_puede_respirar stopped_responding stopped_talking "
        "stopped_answering not_breathing stopped_breathing quit_breathing not_moving is_not_moving not_responding "
        "not_waking not_waking_up not_answering not_conscious not_talking not_respond not_wake not_wake_up not_get_up "
        "not_come_to not_answer_me stopped_moving can_not_wake can_not_stand can_not_walk can_not_see_straight "
        "can_not_think_straight can_not_feel_my can_not_stay_awake keeps_coughing keeps_vomiting keeps_throwing "
        "keeps_gagging keeps_shaking can_not_think no_answer no_responde can_not_keep_my_eyes hardly_stand "
        "barely_stand no_despierta "
        "not_walk_straight not_come_round not_come_around not_coming_to not_coming_round not_rouse not_rousing "
        "can_not_rouse can_not_revive can_not_get_response can_not_get_a_response not_reacting not_react no_reaction "
        "no_response no_sign_of_life no_signs_of_life not_open_eyes can_not_get_up can_not_sit_up can_not_stand_up "
        "can_not_keep_balance can_not_keep_my_balance can_not_stay_upright can_not_speak can_not_talk can_not_swallow "
        "can_not_feel_legs can_not_feel_face can_not_feel_hands can_not_feel_fingers can_not_move_arms "
        "can_not_move_legs can_not_catch_breath can_not_focus_eyes can_not_keep_eyes_open not_talking_right "
        "not_waking_at not_stirring not_stir has_not_moved have_not_moved not_moved_since barely_conscious "
        "barely_awake barely_responsive hardly_conscious barely_moving not_alive not_say_anything not_said_a_word "
        "quit_talking quit_moving quit_responding gone_quiet went_quiet went_silent gone_silent not_making_a_sound "
        "not_hear_him not_hear_her no_answer_from stopped_yelling stopped_shouting stopped_screaming stopped_crying "
        "not_respond_to not_answer not_reply not_speak not_talk not_wake_him not_wake_her no_pulse trouble_staying "
        "trouble_standing trouble_walking trouble_seeing trouble_talking trouble_keeping trouble_speaking "
        "trouble_swallowing trouble_focusing trouble_thinking struggling_to_stand struggling_to_stay "
        "struggling_to_walk struggling_to_speak struggling_to_talk hard_time_staying hard_time_standing "
        "hard_time_walking drifting_off nodding_off dozing_off fighting_to_stay can_not_keep_awake drifting_in "
        "falling_unconscious fading_in slipping_out zoning barely_keep_my hardly_keep_my barely_keep_eyes "
        "hardly_keep_eyes barely_stay barely_walk barely_talk barely_see hardly_see hardly_walk"
    ),
    "down_state": (
        "lies_there lays_there lies_on lies_in lies_still lying_still lying_at hit_the_deck face_down "
        "lying_there laying_there lying_on laying_on slumped limp hit_the_ground "
        "dropped_to_the_ground on_the_ground on_the_floor lying_down laying_down fell_over fell_down went_down flat_on "
        "lying_in laying_in lying_next fell_on_the_ground hit_the_grass is_lying is_laying hit_the_floor hit_the_dirt "
        "hit_floor hit_dirt hit_ground hit_deck on_knees sprawled crumpled_up in_a_heap flopped_over toppled_over "
        "tipped_over_and fell_backwards fell_backward fell_forward flat_out face_first fallen_over fallen_down "
        "falls_down fell_right_over laid_out on_his_back fell_to_ground fell_to_knees falling_over falling_down keeled "
        "went_to_ground had_to_sit_down had_to_lie_down need_to_lie_down need_to_sit_down had_to_lay_down "
        "need_to_lay_down dropped_to_ground dropped_on_ground dropped_to_knees"
    ),
    "drop": "collapsed folded toppled flopped keeled buckled drop~ slump~ crumple~ fold~ topple~ flop~ keel~ buckle~",
    "is_down": (
        "is_down are_down went_down man_down is_hurt got_hurt is_injured gets_hurt hurt_bad is_dead is_dying died "
        "is_bleeding is_unconscious got_hurt_bad badly_hurt hurt_badly hurt_himself hurt_herself knocked_out "
        "is_knocked_out broke_leg broke_arm broke_ankle crushed_hand crushed_foot crushed_leg crushed_fingers hit_head "
        "hit_in_head cracked_head is_passed"
    ),
    "gas": (
        "gas gases smell smells fumes fume stink stench vapor vapors vapour* odor odour methane it stuff air that "
        "gasses sulfur sulphur"
    ),
    "gas_strong": "gas gases fumes fume methane sewer_gas vapors vapor gasses sewer_gases sulfide hydrogen_sulfide h2s",
    "got_to": (
        "over_come got_to overcame overcoming overwhelmed knocked_me knocked_him knocked_her making_her made_me "
        "made_him made_her made_us got_me got_him got_us gave_me got_to_me has_me had_me has_him has_her left_me "
        "leaves_me knocked_out took_out made_my hit_him hit_her hurts_my messing_with doing_a_number is_making made "
        "choking make~ hit~_me burn~ get~_to make~_me make~_us give~_me make~_my make~_him"
    ),
    "sickened": (
        "sideways off_my_feet off_feet for_six me him her us over down back sick ill dizzy gag "
        "cough faint feel throw_up puke vomit weird funny out woozy "
        "eyes_water throat head chest hard wrong lungs headache nauseous dopey sleepy hurt swim spin giddy poorly "
        "stomach light_headed lightheaded loopy weak retch hurl"
    ),
    "breathed": (
        "over_come overcome whiff poisoned sniffed took_a_breath breathed_in breathed_it breathe~ inhale~ lungful "
        "mouthful noseful snootful faceful lung_full lungfull face_full mouth_full nose_full breath_of breaths_of"
    ),
    "help": (
        "help ayuda auxilio socorro sos mayday emergency emergencia ambulance paramedics 911 nine_one_one ambulancia"
    ),
    "collapse": "kollapsed collapse~",
    "man_down": (
        "man_down person_down child_down kid_down swimmer man_overboard man_in_tank dog_in_tank kid_in_tank "
        "child_in_tank person_in_tank"
    ),
    "out_of_breath": "out_of_breath",
    "plea": (
        "stuck_help needs_ambulance needs_doctor needs_help_now need_help_now call_for_help call_for_ambulance "
        "call_for_an_ambulance send_someone send_somebody call_help send_help get_help call_911 need_911 i_called_911 "
        "called_911 need_an_ambulance call_an_ambulance call_ambulance get_an_ambulance send_an_ambulance "
        "need_ambulance need_paramedics need_doctor need_a_medic this_is_an_emergency it_is_an_emergency "
        "have_an_emergency ambulance_now he_is_dead she_is_dead call_999 dial_911 phone_911 someone_call_911 "
        "call_the_ambulance call_paramedics call_doctor need_help_fast need_help_quick need_urgent_help urgent_help "
        "get_ambulance send_paramedics send_police need_rescue need_fire_department call_fire_department "
        "call_the_fire_department rescue_needed is_not_alive is_gone_blue"
    ),
    "drop_like": "to_floor on_floor onto_floor to_grass to_ground like and unconscious on_ground next_to dead",
    "pair": "weak shaky wobbly drowsy sleepy confused clammy sick ill groggy sweaty",
    "cough": "coughing wheezing gagging",
    "help_word": "help save",
    "help_me": (
        "anybody_help anyone_help need_help_here we_need_help_here call_somebody call_someone call_somebody_now "
        "help_me help_us help_him help_her somebody_help someone_help need_help i_need_help we_need_help "
        "please_help_me help_now help_quick call_911 emergency_here ayudame ayudenme ambulance_now ambulance_please "
        "help_help it_is_emergency this_is_emergency need_911_now help_me_please i_need_an_ambulance"
    ),
    "of_sudden": "of_sudden all_of_a_sudden suddenly",
    "sleepy_gas": "sleepy drowsy shaky woozy",
    "went_wobbly": "gone_all came_over_all come_over_all gone_a_bit went_all came_over gone_wobbly going_all",
    "odd_state": (
        "wobbly weak shaky funny weird faint hot cold clammy sweaty white limp pale quiet strange giddy floppy green"
    ),
    "inner": "chest stomach tummy belly guts gut throat lungs lung ears ear heart eyes sinuses insides",
    "pained": (
        "hurt~ ache~ pain~ killing cramping beating fast racing hammering thumping fluttering skipping irregular "
        "churning knot knots upset burn~"
    ),
    "feel_fine": (
        "fine good great ok okay better best confident sure safe happy comfortable ready tired cold hot warm wet dirty "
        "silly lucky alone free nothing normal alright well hungry thirsty old young strong it solid bottom resistance "
        "bump something that this smooth rough hard soft loose tight dry sad mad bored lazy stiff sore_muscles nervous "
        "anxious relieved comfy calm proud bad_about guilty useless lost stuck dumb rushed done the_bottom texture "
        "edge rain heat wind cool chilly clean gross able clear"
    ),
    "like_sim": (
        "as_if as_though like_have like_a like_i_am like_i_was like_my like_hell like_crap like_garbage like_roadkill "
        "like_trash like_death like_hammered like_i_have like_i_might like_i_will like_i_could"
    ),
    "every": "yard everything everythings world room ground floor trees sky it_all vision",
    "swim_state": (
        "going_round goes_round round_and_round swimmy spin~ spinny fuzzy blurry blurred dark black dim hazy wobbly "
        "tilt~ tilty sway~ swaying swim~ double foggy fading cloudy gray grey white tunnel far_away"
    ),
    "not_right": (
        "not_look_good not_look_right not_look_well not_look_so_good not_looking_right not_look_okay not_look_ok "
        "not_seem_right not_seem_okay not_seem_well not_acting_right not_acting_normal not_acting_like_himself "
        "not_himself not_herself not_sound_good not_sound_right not_talking_right not_normal looks_bad looking_bad "
        "looks_awful looks_terrible looks_rough looks_horrible bad_shape rough_shape in_trouble in_real_trouble "
        "in_distress bad_way"
    ),
    "no_feel": "can_not_feel could_not_feel not_feel not_feeling lost_feeling no_feeling",
    "quit_word": "quit quits quitting stopped stops stop stopping ceased no_longer",
    "voice": (
        "yelling shouting screaming crying calling answering replying responding hollering talking speaking moving "
        "breathing knocking coughing groaning moaning waving"
    ),
    "head_in": "in_head in_my_head in_head_now to_head to_my_head",
    "end_of_legs": "from_under beneath wobbly weak numb funny to_jelly on_me",
    "crushed": (
        "jammed crushed squashed squished mangled pinned smashed trapped pinched crunched flattened broken "
        "broke sliced "
        "gashed caught"
    ),
    "faint": "faint~ went_black went_dark going_black going_dark_on",
    "ouch": "ow oww ouch oof argh aargh ugh oh_my_head",
    "rescuers": (
        "firies rescue_people rescue_services rescue_crew fire_engine fire_truck ambulance ambulances ambos ambo "
        "paramedic paramedics medics medic 911 999 112 "
        "000 triple_zero triple_0 "
        "nine_one_one nine_nine_nine fire_brigade fire_department fire_service firemen firefighters fire_crew "
        "rescue_squad rescue_team emergency_services coastguard ambulancia bomberos emt emts 110 119 18"
    ),
    "call_to": (
        "call~ ring~ rang dial~ phone~ fetch~ send~ get getting need needs want wants called rung sent "
        "llamen llame llama llamar pidan summon~ radio~ where_is come coming"
    ),
    "healer": "doctor doctors doc nurse",
    "fetch_quick": "fetch~ get getting find call~ send~ ring~",
    "quick": "quick quickly fast now urgently hurry at_once straight_away right_away immediately asap please",
    "clutch": "hold~ clutch~ grip~ grab~ rub~ press~",
    "chest": "chest heart breastbone",
    "pain": "pain pains ache aches aching hurts hurting tingling numbness numb",
    "heart_arm": "left_arm jaw down_arm down_left_arm up_arm in_jaw shoulder_blades",
    "babble": "gibberish nonsense rubbish garbage gobbledygook rambling raving mumbling slurred jibberish",
    "speak": "talk~ speak~ say~ said come~_out words speech",
    "get_sense": (
        "not_get_any_sense not_get_sense no_sense_out not_get_word not_get_a_word not_get_response "
        "not_get_an_answer not_get_reply"
    ),
    "no_sense": (
        "makes_no_sense making_no_sense not_making_sense not_making_any_sense not_make_sense not_make_any_sense "
        "talking_in_riddles"
    ),
    "swallowed": (
        "took_in taken_in takes_in swallow~ gulp~ drank drunk drinking mouthful_of licked licking sip_of "
        "sipped ate eaten eating chewing chewed "
        "taste_of in_mouth in_his_mouth in_her_mouth in_my_mouth"
    ),
    "swallowed_it": (
        "pole sock dipstick scummy_stick mucky_stick dirty_stick some_of_it it tank_water septic_water filth "
        "puddle scum sludge muck mouthful drain_field "
        "tank_stuff bit_of_it"
    ),
    "in_eye": (
        "in_eye in_eyes in_one_eye in_left_eye in_both_eyes in_face in_mouth up_nose in_nose into_eye into_eyes "
        "into_mouth into_face in_to_eye in_to_eyes"
    ),
    "splashed": (
        "landed dropped fell splash~ squirt~ spray~ spatter~ splatter~ spit~ flicked sprayed got went flew shot dripped"
    ),
    "splash_what": (
        "it some muck sewage water stuff filth gunk liquid sludge tank scum crud slop poop drops splash splashes bit"
    ),
    "splash_other": "hand soap shampoo dust sun hair sand wind rain onion light smoke sawdust grass pollen fly",
    "wound": "cut cuts wound graze scratch sore blister open_cut open_wound open_sore gash scrape scab",
    "wound_in": "into in in_to on got_in over all_over touch~ and",
    "on_limb": "on on_to onto upon over across",
    "came_down": (
        "came_down come_down comes_down fell fallen dropped drop slammed landed slipped shut closed crashed slid "
        "rolled went_down"
    ),
    "gas_monitor": (
        "gas_alarm gas_monitor gas_meter gas_detector gas_sensor h2s_meter four_gas_meter air_monitor air_meter "
        "gas_tester oxygen_alarm oxygen_meter"
    ),
    "sounding_gas": (
        "going_off went_off goes_off screaming beeping sounding alarming shrieking chirping squealing red flashing "
        "tripped wailing ringing set_off"
    ),
    "number_for": "number_for",
    "on_way": "on_way coming needed wanted",
    "clutch_hard": "clutch~ grip~ claw~",
    "wrong_with": "wrong_with matter_with up_with",
    "tank_liquid": "tank_water septic_water muck gunk sewage filth sludge scum slop",
    "confused_lost": (
        "not_know_where_he not_know_where_she not_know_who_he not_know_who_she not_know_name not_know_day "
        "not_remember_name not_recognise not_recognize"
    ),
    "small_limb": "toe toes thumb thumbs finger fingers wrist ankle knuckles shin",
}
